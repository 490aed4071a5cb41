package spanledger.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spanledger.section.CatalogueSection;
import spanledger.section.Extrusion;
import spanledger.section.StandardOutlines;
import spanledger.section.outline.Outline;
import spanledger.tables.NearMiss;

/** Sections of the catalogue in the place of outline files. */
final class CatalogueOutlines {

  private final Map<String, CatalogueSection> sections;

  CatalogueOutlines(Map<String, CatalogueSection> sections) {
    this.sections = sections;
  }

  /** The section of this name, unless there is a file of that name. */
  Optional<Extrusion> find(Path word) {
    CatalogueSection section = Files.exists(word) ? null : sections.get(word.toString());
    if (section == null) {
      return Optional.empty();
    }
    String source = section.source().citation();
    return outline(section.form()).map(outline -> Extrusion.of(section.name(), source, outline));
  }

  private static Optional<Outline> outline(CatalogueSection.Form form) {
    return form instanceof CatalogueSection.ByOutline drawn
        ? Optional.of(drawn.outline())
        : StandardOutlines.of(((CatalogueSection.ByFormula) form).shape());
  }

  /** Why a word that can be no file is no section either; nothing if it may be meant as a file. */
  Optional<String> unknown(Path word) {
    boolean mayBeFile =
        Files.exists(word)
            || word.getNameCount() > 1
            || word.toString().matches("(?i).*\\.(json|dxf)");
    if (mayBeFile || sections.containsKey(word.toString())) {
      return Optional.empty();
    }
    String near =
        NearMiss.of(word.toString(), sections.keySet())
            .map(name -> " Did you mean \"" + name + "\"?")
            .orElse(" \"spanledger catalogue\" lists the sections.");
    return Optional.of("There is neither a file nor a catalogue section \"" + word + "\"." + near);
  }

  /** A name as the beginning of file names. */
  static String stem(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-");
  }
}
