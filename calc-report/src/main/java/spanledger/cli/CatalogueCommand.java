package spanledger.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spanledger.job.Tables;
import spanledger.section.CatalogueSection;
import spanledger.summary.CatalogueText;
import spanledger.tables.Library;
import spanledger.tables.NearMiss;
import spanledger.tables.TableFormatException;

/** Lists the catalogue sections that a job can name, and compares one with what is published. */
@Command(
    name = "catalogue",
    description =
        "Lists the catalogue sections that a job can name, or shows one: what is published beside what"
            + " follows from its sizes.",
    mixinStandardHelpOptions = true,
    versionProvider = BuildVersion.class)
final class CatalogueCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description = "The section to show; all are listed if left out.")
  private @Nullable String name;

  @Option(
      names = "--library",
      paramLabel = "FILE",
      description = "A data file of your own with sections; its rows come on top.")
  private @Nullable Path library;

  @Option(names = "--json", description = "Print as JSON.")
  private boolean json;

  @SuppressWarnings("NullAway.Init") // picocli injects spec before it runs the command
  CatalogueCommand() {}

  @Override
  public void run() {
    Map<String, CatalogueSection> sections = sections();
    PrintWriter out = spec.commandLine().getOut();
    if (name == null) {
      out.print(
          json
              ? CatalogueText.json(sections.values(), false)
              : CatalogueText.list(sections.values()));
    } else {
      CatalogueSection section = sections.get(name);
      if (section == null) {
        String near =
            NearMiss.of(name, sections.keySet())
                .map(n -> " Did you mean " + n + "?")
                .orElse(" \"spanledger catalogue\" lists them.");
        throw wrong("There is no catalogue section \"" + name + "\"." + near);
      }
      out.print(
          json ? CatalogueText.json(List.of(section), true) : CatalogueText.compared(section));
    }
    out.flush();
  }

  private Map<String, CatalogueSection> sections() {
    Map<String, CatalogueSection> sections = new LinkedHashMap<>(Tables.shipped().sections());
    if (library != null) {
      try (InputStream content = Files.newInputStream(library)) {
        Library.read(library.toString(), content)
            .sections()
            .forEach(section -> sections.put(section.name(), section));
      } catch (TableFormatException e) {
        throw wrong(String.valueOf(e.getMessage()));
      } catch (IOException e) {
        throw wrong("The library " + library + " cannot be read; check the path.");
      }
    }
    return sections;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
