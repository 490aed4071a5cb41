package spanledger.verification.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same job gives the same bytes, whoever runs it and wherever. */
class ExampleSameBytesTest {

  @TempDir Path folder;

  /**
   * In a Java of its own, where sets and maps have another order, with another language, other
   * digits, another time zone and another character set.
   */
  @Test
  void workbookAndResultsAreTheSameBytesElsewhere() throws IOException, InterruptedException {
    Path there = folder.resolve("there");
    Path printed = folder.resolve("printed.txt");
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx2g",
                    "-XX:+UseSerialGC",
                    "-Duser.language=ar",
                    "-Duser.country=EG",
                    "-Duser.timezone=Pacific/Kiritimati",
                    "-Dfile.encoding=ISO-8859-6",
                    "-Djava.awt.headless=true",
                    "-cp",
                    System.getProperty("java.class.path"),
                    "spanledger.cli.Main",
                    "check",
                    PackingHouse.JOB.toAbsolutePath().toString(),
                    "--out",
                    there.toString()))
            .redirectErrorStream(true)
            .redirectOutput(printed.toFile())
            .directory(new File(folder.toString()))
            .start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).as("ended within five minutes").isTrue();

    assertThat(process.exitValue()).isEqualTo(1);
    assertThat(there.resolve("results.json"))
        .hasSameBinaryContentAs(PackingHouse.checked().results());
    assertThat(there.resolve("workbook.xlsx"))
        .hasSameBinaryContentAs(PackingHouse.checked().workbook());
  }

  /** Twice in one run: nothing is left behind in the program that changes the second. */
  @Test
  void workbookAndResultsAreTheSameBytesTheSecondTime() {
    Path again = folder.resolve("again");
    java.io.StringWriter out = new java.io.StringWriter();
    int exit =
        spanledger.cli.Main.run(
            new java.io.PrintWriter(out),
            new java.io.PrintWriter(new java.io.StringWriter()),
            "check",
            PackingHouse.JOB.toString(),
            "--out",
            again.toString());

    assertThat(exit).isEqualTo(PackingHouse.checked().exit());
    assertThat(again.resolve("results.json"))
        .hasSameBinaryContentAs(PackingHouse.checked().results());
    assertThat(again.resolve("workbook.xlsx"))
        .hasSameBinaryContentAs(PackingHouse.checked().workbook());
  }
}
