package spanledger.memberdesign;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.Vector;
import spanledger.procedure.OutOfDomainException;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.MemberSections;
import spanledger.resistance.member.MomentFactors;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Preparation;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Weld;

/**
 * By which code members are checked, and what it has to know of them.
 *
 * @param code the member code
 * @param lengths rules of buckling lengths; the first that covers a member and mode counts, or the
 *     next if the buckling of the frame tells nothing
 * @param details what else the job says; the last moment factors that cover a member count
 */
public record MemberDesign(MemberCode code, List<LengthRule> lengths, List<Detail> details) {

  public MemberDesign {
    lengths = List.copyOf(lengths);
    details = List.copyOf(details);
  }

  /**
   * The member as the code sees it, ready to be checked, or why it cannot be.
   *
   * @param analysed lengths from the buckling of the frame
   */
  public MemberReadiness prepare(Member member, FrameBucklingLengths analysed) {
    List<NotCheckable.Lack> lacks = new ArrayList<>();
    Optional<MemberSection> section = MemberSections.of(member.section());
    if (section.isEmpty()) {
      lacks.add(MemberSections.lack(member.section()));
    }
    Map<BucklingMode, BucklingLength> found = new EnumMap<>(BucklingMode.class);
    for (BucklingMode mode : BucklingMode.values()) {
      length(member, mode, analysed, lacks).ifPresent(length -> found.put(mode, length));
    }
    if (section.isEmpty()) {
      return new MemberReadiness.Lacking(member, lacks);
    }
    Preparation prepared;
    try {
      prepared = code.prepare(memberCase(member, section.get(), found));
    } catch (OutOfDomainException e) {
      lacks.add(
          new NotCheckable.Lack(
              "the formulas of the code do not cover this member: " + e.getMessage(),
              "give a resistance by test under \"declared\", or judge it by hand"));
      return new MemberReadiness.Lacking(member, lacks);
    }
    if (prepared instanceof PreparedMember ready) {
      return new MemberReadiness.Ready(member, ready);
    }
    lacks.addAll(((NotCheckable) prepared).lacks());
    return new MemberReadiness.Lacking(member, lacks);
  }

  private Optional<BucklingLength> length(
      Member member,
      BucklingMode mode,
      FrameBucklingLengths analysed,
      List<NotCheckable.Lack> lacks) {
    boolean silent = false;
    for (LengthRule rule : lengths) {
      if (!rule.covers(member, mode)) {
        continue;
      }
      if (!(rule.basis() instanceof LengthBasis.FrameBuckling)) {
        return Optional.of(length(member, rule, rule.basis()));
      }
      Optional<BucklingLength> length = analysed.of(member, mode);
      if (length.isPresent()) {
        return length;
      }
      silent = true;
    }
    if (silent) {
      lacks.add(
          new NotCheckable.Lack(
              "the critical modes of the frame tell nothing of "
                  + mode.words()
                  + " of "
                  + member.name(),
              "declare its buckling length in a later entry"));
    }
    return Optional.empty();
  }

  private static BucklingLength length(Member member, LengthRule rule, LengthBasis basis) {
    if (basis instanceof LengthBasis.Declared given) {
      return new BucklingLength(given.length(), "declared: " + rule.reason(), rule.source());
    }
    if (basis instanceof LengthBasis.OfMember times) {
      return new BucklingLength(
          times.factor() * member.length(),
          text(times.factor()) + " times the length of the member: " + rule.reason(),
          rule.source());
    }
    LengthBasis.BetweenNodes between = (LengthBasis.BetweenNodes) basis;
    double longest = 0;
    for (int i = 1; i < member.nodes().size(); i++) {
      Vector from = member.nodes().get(i - 1).place();
      longest = Math.max(longest, member.nodes().get(i).place().minus(from).norm());
    }
    return new BucklingLength(
        between.factor() * longest,
        text(between.factor()) + " times the longest way between its nodes: " + rule.reason(),
        rule.source());
  }

  private static String text(double factor) {
    return BigDecimal.valueOf(factor).stripTrailingZeros().toPlainString();
  }

  /** Whether any length rests on the buckling of the frame. */
  public boolean needsFrameBuckling() {
    return lengths.stream().anyMatch(rule -> rule.basis() instanceof LengthBasis.FrameBuckling);
  }

  private MemberCase memberCase(
      Member member, MemberSection section, Map<BucklingMode, BucklingLength> found) {
    MomentFactors moments = MomentFactors.uniform();
    List<Weld> welds = new ArrayList<>();
    List<Hole> holes = new ArrayList<>();
    List<DeclaredResistance> declared = new ArrayList<>();
    for (Detail detail : details) {
      if (!detail.members().picks(member)) {
        continue;
      }
      if (detail instanceof Detail.Moments given) {
        moments = given.factors();
      } else if (detail instanceof Detail.Welded given) {
        welds.add(given.weld());
      } else if (detail instanceof Detail.Drilled given) {
        holes.add(given.hole());
      } else if (detail instanceof Detail.Resists given) {
        declared.add(given.resistance());
      }
    }
    return new MemberCase(
        member.name(), section, member.alloy(), found, moments, welds, holes, declared);
  }
}
