package spanledger.job;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;

/** Decodes the title block. */
final class TitleDecoder {

  private final Reading reading;

  TitleDecoder(Reading reading) {
    this.reading = reading;
  }

  Optional<JobTitle> decode(Located block) {
    return reading.fields("title", block).flatMap(this::title);
  }

  private Optional<JobTitle> title(Fields fields) {
    Optional<LocatedText> title = fields.requireText("title");
    Optional<LocatedText> reference = fields.requireText("reference");
    String client = fields.findText("client");
    String engineer = fields.findText("engineer");
    Optional<LocalDate> date = fields.requireText("date").flatMap(this::date);
    List<String> notes = new ArrayList<>();
    for (Located note : fields.findList("notes")) {
      if (note instanceof LocatedText text) {
        notes.add(text.text());
      } else {
        reading.gap(note.pointer());
      }
    }
    if (title.isEmpty() || reference.isEmpty() || date.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new JobTitle(
            title.get().text(), reference.get().text(), client, engineer, date.get(), notes));
  }

  private Optional<LocalDate> date(LocatedText text) {
    try {
      return Optional.of(LocalDate.parse(text.text()));
    } catch (DateTimeParseException e) {
      reading.error(
          text,
          text.words() + ", which is no date",
          "year-month-day, for example \"2026-03-31\"",
          "write the date in this order with hyphens");
      return Optional.empty();
    }
  }
}
