package spanledger.job.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * The problems of one job file, for people and for programs.
 *
 * @param file the file, as its path was given
 * @param problems its problems, in file order
 */
public record ProblemReport(String file, List<Problem> problems) {

  /** The version of the JSON form; raised when a reader would have to change. */
  public static final int FORMAT_VERSION = 1;

  public ProblemReport {
    problems = problems.stream().sorted(Problem.IN_FILE_ORDER).toList();
  }

  /** Whether the job cannot be calculated. */
  public boolean refuses() {
    return problems.stream().anyMatch(Problem::isError);
  }

  /** One block for each problem and a last line that counts them; empty if there are none. */
  public String text() {
    StringBuilder text = new StringBuilder();
    for (Problem problem : problems) {
      text.append(position(problem)).append("  ").append(problem.severity().words());
      if (!problem.pointer().text().isEmpty()) {
        text.append("  ").append(problem.pointer());
      }
      text.append('\n');
      text.append("    found     ").append(problem.found()).append('\n');
      text.append("    expected  ").append(problem.expected()).append('\n');
      text.append("    to mend   ").append(problem.remedy()).append("\n\n");
    }
    if (!problems.isEmpty()) {
      text.append(summary()).append('\n');
    }
    return text.toString();
  }

  private static String position(Problem problem) {
    Place place = problem.place();
    return place.equals(Place.WHOLE_FILE)
        ? problem.file()
        : problem.file() + ":" + place.line() + ":" + place.column();
  }

  private String summary() {
    String counted =
        refuses()
            ? counted(errors(), "error")
                + (warnings() > 0 ? " and " + counted(warnings(), "warning") : "")
            : counted(warnings(), "warning");
    return counted + (refuses() ? "; nothing was calculated." : ".");
  }

  private long errors() {
    return problems.stream().filter(Problem::isError).count();
  }

  private long warnings() {
    return problems.size() - errors();
  }

  private static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  /** The problems as JSON text, ending in a line break. */
  public String json() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "spanledger-problems");
    root.put("formatVersion", FORMAT_VERSION);
    root.put("file", file);
    root.put("outcome", refuses() ? "refused" : "accepted");
    root.put("errors", errors());
    root.put("warnings", warnings());
    ArrayNode list = root.putArray("problems");
    for (Problem problem : problems) {
      ObjectNode node = list.addObject();
      node.put("severity", problem.severity().words());
      node.put("pointer", problem.pointer().text());
      node.put("line", problem.place().line());
      node.put("column", problem.place().column());
      node.put("found", problem.found());
      node.put("expected", problem.expected());
      node.put("remedy", problem.remedy());
    }
    try {
      return new ObjectMapper()
              .enable(SerializationFeature.INDENT_OUTPUT)
              .writeValueAsString(root)
              .replace("\r\n", "\n")
          + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree of plain nodes can always be written.", e);
    }
  }
}
