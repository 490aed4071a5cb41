package spanledger.resistance.member;

/** The member checks of a standard. Implementations are immutable. */
public interface MemberCode {

  /** A short name, for example {@code en-1999-1-1}. */
  String id();

  /** The standard, as people cite it. */
  String title();

  /** Its figures, as they are used. */
  CodeFigures figures();

  /**
   * Works out all that does not hang on loads.
   *
   * @return a {@link PreparedMember}, or {@link NotCheckable} naming all that is missing
   */
  Preparation prepare(MemberCase member);
}
