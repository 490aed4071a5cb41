package spanledger.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of this build, written into the jar by Maven. */
final class BuildVersion implements IVersionProvider {

  @Override
  public String[] getVersion() throws IOException {
    return new String[] {"spanledger " + read()};
  }

  /**
   * Reads the version of this build.
   *
   * @return the Maven project version, for example {@code 0.1.0-SNAPSHOT}
   * @throws IOException when the jar was packed without its version file
   */
  static String read() throws IOException {
    try (InputStream stream = BuildVersion.class.getResourceAsStream("version.properties")) {
      if (stream == null) {
        throw new IOException("version.properties is missing from the program's jar");
      }
      Properties properties = new Properties();
      properties.load(stream);
      String version = properties.getProperty("version");
      if (version == null) {
        throw new IOException("version.properties in the program's jar names no version");
      }
      return version;
    }
  }
}
