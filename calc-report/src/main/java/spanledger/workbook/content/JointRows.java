package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spanledger.jointdesign.JointFeeds;
import spanledger.jointdesign.JointRun;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * Which runs of procedures have a row of their own. What does not hang on loads, and is the same at
 * every member end with that kind of joint, has one row for all of them.
 */
final class JointRows {

  /**
   * A row.
   *
   * @param working the run
   * @param at the case it belongs to; of a row that hangs on no loads, the first that has it
   * @param loaded whether it hangs on loads
   * @param ofJoint whether it is of this kind of joint only
   * @param part which part it is of, without the joint
   */
  record Row(Working working, JointCases.Case at, boolean loaded, boolean ofJoint, String part) {

    /** What its kind of worked page puts before the part to find it; may be empty. */
    String scope() {
      return loaded ? at.name() : ofJoint ? at.kind() : "";
    }

    /** What tells it from the other rows of its procedure. */
    String label() {
      return scope().isEmpty() ? part : scope() + ": " + part;
    }

    /** The combination in words. */
    String combination() {
      return loaded ? at.run().words() : "whatever the loads";
    }

    String procedure() {
      return working.procedure().procedure().name();
    }
  }

  private final JointCases cases;
  private final IdentityHashMap<Working, Row> rows = new IdentityHashMap<>();
  private final Map<String, Row> unloaded = new HashMap<>();
  private final Map<String, Integer> labels = new HashMap<>();

  JointRows(JointCases cases) {
    this.cases = cases;
  }

  /** The rows of a run and of those that feed it, in order, without those had before. */
  List<Row> add(JointRun run, Working working) {
    List<Row> added = new ArrayList<>();
    add(run, working, added);
    return added;
  }

  private Row add(JointRun run, Working working, List<Row> added) {
    Row known = rows.get(working);
    if (known != null) {
      return known;
    }
    boolean loaded = false;
    JointCases.Part part = cases.part(working.label());
    StringBuilder same = new StringBuilder(working.procedure().procedure().name());
    same.append('|')
        .append(part.ofJoint() ? run.joint().name() : "")
        .append('|')
        .append(part.words());
    for (Feed feed : working.feeds()) {
      if (feed instanceof Feed.Result result) {
        Row from = add(run, result.from(), added);
        loaded |= from.loaded();
        same.append('|').append(from.procedure()).append('|').append(from.label());
        same.append('|').append(result.symbol());
      } else if (feed instanceof Feed.Given given) {
        loaded |= isOfLoads(given);
        same.append('|').append(cases.part(given.origin()).words());
        same.append('=').append(given.value());
      }
    }
    @Nullable Row row = loaded ? null : unloaded.get(same.toString());
    if (row == null) {
      row = new Row(working, cases.of(run), loaded, part.ofJoint(), part.words());
      Integer before = labels.merge(row.procedure() + "|" + row.label(), 1, Integer::sum);
      if (before > 1) {
        row = new Row(working, row.at(), loaded, row.ofJoint(), part.words() + " (" + before + ")");
      }
      added.add(row);
      unloaded.put(same.toString(), row);
    }
    rows.put(working, row);
    return row;
  }

  /** Whether a number comes from loads, not from the job or a table. */
  static boolean isOfLoads(Feed.Given given) {
    return JointFeeds.isOfLoads(given);
  }

  /** The row that a run has. */
  Row of(Working working) {
    return Required.of(rows.get(working), "A run of a joint");
  }

  /** The row that a run has, if it is in the workbook. */
  Optional<Row> find(Working working) {
    return Optional.ofNullable(rows.get(working));
  }
}
