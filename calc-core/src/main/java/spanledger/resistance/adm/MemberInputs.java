package spanledger.resistance.adm;

import java.util.HashMap;
import java.util.Map;
import spanledger.action.Figure;
import spanledger.material.Alloy;
import spanledger.material.TemperStrengths;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Input;
import spanledger.procedure.Step;
import spanledger.provenance.Source;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.Working;

/**
 * The numbers of one member by the symbols that the procedures of the family use for them. A row
 * started here has every input of a known symbol filled; the rest is the caller's.
 */
public final class MemberInputs {

  private static final Map<BucklingMode, String> LENGTHS =
      Map.of(
          BucklingMode.FLEXURAL_Y, "L_cr_y",
          BucklingMode.FLEXURAL_Z, "L_cr_z",
          BucklingMode.TORSIONAL, "L_cr_T",
          BucklingMode.LATERAL_TORSIONAL, "L_b");

  private final MemberCase member;
  private final Map<String, Feed> bySymbol = new HashMap<>();

  /**
   * @param symbols the symbol of each figure of the code that procedures use, by its id
   */
  public MemberInputs(
      MemberCase member, TemperStrengths temper, CodeFigures figures, Map<String, String> symbols) {
    this.member = member;
    section(member.section());
    alloy(member.alloy(), temper);
    for (Figure figure : figures.inOrder()) {
      String symbol = symbols.get(figure.id());
      if (symbol != null) {
        bySymbol.put(symbol, given(figures.figured(figure.id())));
      }
    }
    LENGTHS.forEach(
        (mode, symbol) -> {
          BucklingLength length = member.lengths().get(mode);
          if (length != null) {
            put(
                symbol,
                length.length(),
                "length, " + mode.words() + ": " + length.reason(),
                length.source());
          }
        });
  }

  /** The member. */
  public MemberCase member() {
    return member;
  }

  /** Starts a row with what is known filled. */
  public Working.Feeding row(CompiledProcedure procedure, String label) {
    Working.Feeding row = Working.of(procedure, label);
    for (Input input : procedure.procedure().inputs()) {
      Feed known = bySymbol.get(input.symbol().symbol());
      if (known != null) {
        row.with(input.symbol().symbol(), known);
      }
    }
    return row;
  }

  /** Where a known number comes from. */
  public Feed of(String symbol) {
    Feed known = bySymbol.get(symbol);
    if (known == null) {
      throw new IllegalArgumentException("There is no number for " + symbol + ".");
    }
    return known;
  }

  /** These numbers and the results of a row, under the symbols that they have there. */
  public MemberInputs with(Working row) {
    MemberInputs more = new MemberInputs(member, bySymbol);
    for (Step step : row.procedure().procedure().steps()) {
      String symbol = step.symbol().symbol();
      more.bySymbol.put(symbol, row.feed(symbol));
    }
    return more;
  }

  /** The numbers that hold beside welds, in place of those of the parent metal. */
  public MemberInputs besideWelds() {
    MemberInputs soft = new MemberInputs(member, bySymbol);
    soft.bySymbol.put("F_ty", of("F_tyw"));
    soft.bySymbol.put("F_tu", of("F_tuw"));
    soft.bySymbol.put("F_cy", of("F_cyw"));
    soft.bySymbol.put("aged", given(choice(0, "beside welds no temper counts")));
    soft.bySymbol.put("k_t", given(choice(1, "beside welds")));
    return soft;
  }

  private MemberInputs(MemberCase member, Map<String, Feed> known) {
    this.member = member;
    bySymbol.putAll(known);
  }

  private static Feed given(Figured figured) {
    return new Feed.Given(figured.value(), figured.origin(), figured.source());
  }

  /** A number that says how the case is looked at, not a measured quantity. */
  public static Figured choice(double value, String why) {
    return new Figured(value, why, Source.derived("How the member is looked at"));
  }

  /** A number of the section. */
  public Figured section(double value, String what) {
    MemberSection section = member.section();
    return new Figured(value, "section " + section.name() + ", " + what, section.source());
  }

  private void section(MemberSection section) {
    for (Map.Entry<String, Double> entry : sectionNumbers(section).entrySet()) {
      bySymbol.put(entry.getKey(), given(section(entry.getValue(), entry.getKey())));
    }
  }

  private static Map<String, Double> sectionNumbers(MemberSection section) {
    return Map.of(
        "A", section.properties().area(),
        "I_y", section.properties().secondMomentY(),
        "I_z", section.properties().secondMomentZ(),
        "I_t", section.properties().torsionConstant(),
        "W_t", section.properties().torsionModulus(),
        "I_w", section.warpingConstant(),
        "y_s", section.shearCentreY(),
        "z_s", section.shearCentreZ(),
        "z_j", section.wagnerZ());
  }

  private void alloy(Alloy alloy, TemperStrengths temper) {
    String of = "alloy " + alloy.designation() + ", ";
    put("F_ty", alloy.proofStrength(), of + "tensile yield strength", alloy.source());
    put("F_tu", alloy.ultimateStrength(), of + "tensile ultimate strength", alloy.source());
    put("E", alloy.youngsModulus(), of + "modulus of elasticity", alloy.source());
    put("G", alloy.shearModulus(), of + "shear modulus", alloy.source());
    put("F_cy", temper.compressiveYield(), of + "compressive yield strength", temper.source());
    put("aged", temper.aged() ? 1 : 0, of + "temper T5 to T9", temper.source());
    put("k_t", temper.tensionCoefficient(), of + "tension coefficient", temper.source());
    put("k_c", temper.compressionCoefficient(), of + "coefficient k_c", temper.source());
    boolean welded = !member.welds().isEmpty();
    // Without welds no area is softened, and the strengths beside welds do not enter.
    put(
        "F_tyw",
        welded ? alloy.heatAffected().orElseThrow().proofStrength() : alloy.proofStrength(),
        of + (welded ? "tensile yield strength beside welds" : "no weld"),
        alloy.heatAffected().filter(h -> welded).map(h -> h.source()).orElse(alloy.source()));
    put(
        "F_tuw",
        welded ? alloy.heatAffected().orElseThrow().ultimateStrength() : alloy.ultimateStrength(),
        of + (welded ? "tensile ultimate strength beside welds" : "no weld"),
        alloy.heatAffected().filter(h -> welded).map(h -> h.source()).orElse(alloy.source()));
    put(
        "F_cyw",
        welded ? temper.weldedCompressiveYield().orElseThrow() : temper.compressiveYield(),
        of + (welded ? "compressive yield strength beside welds" : "no weld"),
        temper.source());
  }

  private void put(String symbol, double value, String origin, Source source) {
    bySymbol.put(symbol, new Feed.Given(value, origin, source));
  }
}
