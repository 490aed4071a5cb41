package spanledger.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import spanledger.action.CombinationSet;
import spanledger.action.LoadTrain;
import spanledger.action.Rail;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.action.UserCase;
import spanledger.deck.DeckUses;
import spanledger.deck.Panel;
import spanledger.frame.Frame;
import spanledger.jointdesign.JointDesign;
import spanledger.memberdesign.MemberDesign;

/**
 * A job: a structure and what it must carry.
 *
 * @param title its title block
 * @param rules the rule set with the overrides in it
 * @param overrides the figures in which the job departs from the rule set, in the order of the file
 * @param combinations the combination rules
 * @param frame the members and their supports
 * @param surfaces the floors
 * @param rails the rails of the guardrails
 * @param userCases the load cases given in the job
 * @param trains rows of loads that may stand anywhere along some members
 * @param panels what its decks, floors and treads may be made of
 * @param assembly the description of which the frame came, if it was described and not only typed
 * @param memberDesign by which code members are checked, if the job says so
 * @param jointDesign by which code joints are checked and where they are, if the job says so
 * @param springs what springs of member ends were worked out from
 * @param standing how the structure stands as a whole, if the job says so
 * @param placesPerSegment on how many places of each segment a load that may stand anywhere is
 *     tried
 * @param analysis how the job is to be analysed
 * @param bound the bound at which springs with a range of stiffness are taken in this frame
 * @param sha256 the SHA-256 of the job file's bytes, in hexadecimal
 */
public record Job(
    JobTitle title,
    RuleSet rules,
    List<FigureOverride> overrides,
    CombinationSet combinations,
    Frame frame,
    List<Surface> surfaces,
    List<Rail> rails,
    List<UserCase> userCases,
    List<LoadTrain> trains,
    List<Panel> panels,
    Optional<BuiltAssembly> assembly,
    Optional<MemberDesign> memberDesign,
    Optional<JointDesign> jointDesign,
    SpringOrigins springs,
    Optional<StandingBlock> standing,
    int placesPerSegment,
    AnalysisOptions analysis,
    StiffnessBound bound,
    String sha256) {
  public Job {
    overrides = List.copyOf(overrides);
    surfaces = List.copyOf(surfaces);
    rails = List.copyOf(rails);
    userCases = List.copyOf(userCases);
    trains = List.copyOf(trains);
    panels = List.copyOf(panels);
  }

  /**
   * Which panels its floors and treads are made of.
   *
   * @throws IllegalArgumentException if a floor cannot be shared out to its members
   */
  public DeckUses deck() {
    return DeckUses.of(
        surfaces,
        assembly.map(built -> built.frame().flights()).orElse(List.of()),
        panels.stream().collect(Collectors.toMap(Panel::name, Function.identity())));
  }
}
