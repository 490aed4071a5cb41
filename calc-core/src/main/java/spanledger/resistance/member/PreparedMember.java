package spanledger.resistance.member;

import java.util.List;

/**
 * A member ready to be checked at any cut.
 *
 * @param member the case
 * @param workings what does not hang on loads, each after those that feed it
 * @param checks what is worked out at every cut, each after those that feed it
 * @param remarks what a reader should know, for example a check left out because it cannot govern
 */
public record PreparedMember(
    MemberCase member, List<Working> workings, List<CutCheck> checks, List<String> remarks)
    implements Preparation {

  public PreparedMember {
    workings = List.copyOf(workings);
    checks = List.copyOf(checks);
    remarks = List.copyOf(remarks);
  }

  /** The uses of all checks, in the order in which {@link MemberEvaluator#use} counts them. */
  public List<Use> uses() {
    return checks.stream().flatMap(check -> check.uses().stream()).toList();
  }

  /** An evaluator with its own arrays. */
  public MemberEvaluator evaluator() {
    return new MemberEvaluator(this);
  }

  /**
   * The first run of a procedure with that label.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Working working(String procedureName, String label) {
    return workings.stream()
        .filter(w -> w.procedure().procedure().name().equals(procedureName))
        .filter(w -> w.label().equals(label))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "There is no run of " + procedureName + " called " + label + "."));
  }
}
