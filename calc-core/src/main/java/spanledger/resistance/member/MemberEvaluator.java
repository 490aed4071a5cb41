package spanledger.resistance.member;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spanledger.procedure.CompiledProcedure;

/**
 * Works out the checks of a prepared member at one cut after another, without allocating.
 *
 * <p>Reuses its arrays, so one per thread. {@link #evaluate} first, then read {@link #use}.
 */
public final class MemberEvaluator {

  private static final int NONE = -1;

  private final PreparedMember member;
  private final CompiledProcedure[] procedures;
  private final double[][] slots;

  /** By check: pairs of an effect and the slot that takes it. */
  private final int[][] effects;

  /** By check: triples of an earlier check, its slot, and the slot that takes it. */
  private final int[][] earlier;

  private final int[] checkOfUse;
  private final int[] slotOfUse;

  MemberEvaluator(PreparedMember member) {
    this.member = member;
    int count = member.checks().size();
    procedures = new CompiledProcedure[count];
    slots = new double[count][];
    effects = new int[count][];
    earlier = new int[count][];
    checkOfUse = new int[member.uses().size()];
    slotOfUse = new int[checkOfUse.length];
    int use = 0;
    for (int c = 0; c < count; c++) {
      CutCheck check = member.checks().get(c);
      procedures[c] = check.procedure();
      slots[c] = check.procedure().newSlots();
      link(c, check);
      for (Use one : check.uses()) {
        checkOfUse[use] = c;
        slotOfUse[use++] = check.procedure().slot(one.symbol());
      }
    }
  }

  private void link(int c, CutCheck check) {
    List<Integer> fromCut = new ArrayList<>();
    List<Integer> fromChecks = new ArrayList<>();
    for (int i = 0; i < check.feeds().size(); i++) {
      Feed feed = check.feeds().get(i);
      OptionalDouble constant = CutCheck.constantOf(feed);
      if (constant.isPresent()) {
        slots[c][i] = constant.getAsDouble();
      } else if (feed instanceof Feed.AtCut at) {
        fromCut.addAll(List.of(at.effect().ordinal(), i));
      } else if (feed instanceof Feed.Earlier other) {
        int from = member.checks().indexOf(other.check());
        if (from == NONE || from >= c) {
          throw new IllegalArgumentException(
              check.label() + " needs " + other.symbol() + " of a check that does not precede it.");
        }
        fromChecks.addAll(List.of(from, other.check().procedure().slot(other.symbol()), i));
      }
    }
    effects[c] = fromCut.stream().mapToInt(i -> i).toArray();
    earlier[c] = fromChecks.stream().mapToInt(i -> i).toArray();
  }

  /**
   * Works out every check.
   *
   * @param atCut by {@link Effect#ordinal}, finite, not modified
   */
  public void evaluate(double[] atCut) {
    for (int c = 0; c < slots.length; c++) {
      double[] own = slots[c];
      int[] fromCut = effects[c];
      for (int i = 0; i < fromCut.length; i += 2) {
        own[fromCut[i + 1]] = atCut[fromCut[i]];
      }
      int[] fromChecks = earlier[c];
      for (int i = 0; i < fromChecks.length; i += 3) {
        own[fromChecks[i + 2]] = slots[fromChecks[i]][fromChecks[i + 1]];
      }
      procedures[c].evaluate(own);
    }
  }

  /** How much is used, by place in {@link PreparedMember#uses}, after {@link #evaluate}. */
  public double use(int index) {
    return slots[checkOfUse[index]][slotOfUse[index]];
  }

  /** The greatest use after {@link #evaluate}; NaN if any check has no value. */
  public double greatestUse() {
    double greatest = 0;
    for (int i = 0; i < slotOfUse.length; i++) {
      greatest = Math.max(greatest, use(i));
    }
    return greatest;
  }

  /**
   * The checks as worked out last, as rows for a workbook. Feeds of {@link Feed.AtCut} and {@link
   * Feed.Earlier} are left as they are.
   */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    for (int c = 0; c < slots.length; c++) {
      CutCheck check = member.checks().get(c);
      workings.add(Working.done(check.procedure(), check.label(), check.feeds(), slots[c]));
    }
    return workings;
  }
}
