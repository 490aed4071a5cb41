package spanledger.overturning;

import java.util.List;
import spanledger.action.LoadTrain;
import spanledger.action.Rail;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.action.UserCase;
import spanledger.frame.Frame;

/**
 * A structure whose standing is looked at, with what acts on it.
 *
 * @param frame its members and feet
 * @param floors its floors
 * @param rails its guardrails
 * @param userCases load cases given by its author
 * @param trains rows of loads that may stand anywhere along some members
 * @param rules the loads that the rules ask for
 * @param plates corners of the base plates of its feet, as far as they are known
 */
public record StandingStructure(
    Frame frame,
    List<Surface> floors,
    List<Rail> rails,
    List<UserCase> userCases,
    List<LoadTrain> trains,
    RuleSet rules,
    List<PlateCorner> plates) {
  public StandingStructure {
    floors = List.copyOf(floors);
    rails = List.copyOf(rails);
    userCases = List.copyOf(userCases);
    trains = List.copyOf(trains);
    plates = List.copyOf(plates);
  }

  /** One whose feet are points. */
  public StandingStructure(
      Frame frame,
      List<Surface> floors,
      List<Rail> rails,
      List<UserCase> userCases,
      List<LoadTrain> trains,
      RuleSet rules) {
    this(frame, floors, rails, userCases, trains, rules, List.of());
  }
}
