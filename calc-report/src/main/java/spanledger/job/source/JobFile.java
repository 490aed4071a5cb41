package spanledger.job.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spanledger.job.problem.Finding;
import spanledger.job.problem.Place;
import spanledger.job.problem.Pointer;
import spanledger.job.problem.ProblemLog;
import spanledger.tables.NearMiss;

/**
 * The text of a job file or of another file that goes with it.
 *
 * @param text its characters, without a byte order mark
 * @param sha256 the SHA-256 of its bytes as they are on disk, in hexadecimal
 */
public record JobFile(String text, String sha256) {

  /** The largest file read, bytes. A frame of some thousand members takes about a tenth of this. */
  public static final int LARGEST = 16 * 1024 * 1024;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /**
   * Loads a file.
   *
   * @param path the file
   * @param log takes what is wrong with it
   * @return its text, unless it cannot be read as one
   */
  public static Optional<JobFile> load(Path path, ProblemLog log) {
    return load(path, "a job file", "start from one of docs/examples", log);
  }

  /**
   * Loads a file that goes with a job.
   *
   * @param path the file
   * @param kind what it should be, for example {@code an outline file}
   * @param start what to do about an empty file
   * @param log takes what is wrong with it
   * @return its text, unless it cannot be read as one
   */
  public static Optional<JobFile> load(Path path, String kind, String start, ProblemLog log) {
    try {
      if (Files.isDirectory(path)) {
        return refuse(log, "a directory", kind, "give the path of the file in this directory");
      }
      byte[] bytes;
      try (InputStream stream = Files.newInputStream(path)) {
        bytes = stream.readNBytes(LARGEST + 1);
      }
      return ofBytes(bytes, kind, start, log);
    } catch (NoSuchFileException e) {
      return refuse(log, "no file of this name", kind, remedyForMissing(path));
    } catch (AccessDeniedException e) {
      return refuse(log, "a file that may not be read", kind, "allow yourself to read it");
    } catch (IOException e) {
      return refuse(
          log,
          "a file that cannot be read: " + Quoted.shortened(String.valueOf(e.getMessage())),
          kind,
          "check the disk or the network drive on which it is");
    }
  }

  private static Optional<JobFile> ofBytes(
      byte[] bytes, String kind, String start, ProblemLog log) {
    if (bytes.length > LARGEST) {
      return refuse(
          log,
          "a file of more than " + LARGEST / (1024 * 1024) + " MiB",
          kind + ", which is far smaller",
          "check whether this is the right file");
    }
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
      return refuse(
          log, "a text in UTF-16", "a text in UTF-8", "save the file again with encoding UTF-8");
    }
    Optional<String> decoded = decode(bytes, log);
    if (decoded.isEmpty()) {
      return Optional.empty();
    }
    String text = decoded.get();
    if (text.startsWith(BYTE_ORDER_MARK)) {
      text = text.substring(1);
      log.warning(
          Pointer.ROOT,
          Place.WHOLE_FILE,
          new Finding(
              "a byte order mark before the text; it was passed over",
              "UTF-8 without a byte order mark",
              "save the file again as UTF-8 without BOM"));
    }
    if (text.isBlank()) {
      return refuse(log, "an empty file", kind, start);
    }
    return Optional.of(new JobFile(text, sha256(bytes)));
  }

  private static Optional<String> decode(byte[] bytes, ProblemLog log) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      int code = Byte.toUnsignedInt(bytes[in.position()]);
      log.error(
          Pointer.ROOT,
          TextPlaces.endOf(text),
          new Finding(
              String.format("the byte 0x%02X, which is not UTF-8", code),
              "a text in UTF-8",
              "save the file again with encoding UTF-8"));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length >= 2
        && Byte.toUnsignedInt(bytes[0]) == first
        && Byte.toUnsignedInt(bytes[1]) == second;
  }

  private static Optional<JobFile> refuse(
      ProblemLog log, String found, String expected, String remedy) {
    log.error(Pointer.ROOT, Place.WHOLE_FILE, new Finding(found, expected, remedy));
    return Optional.empty();
  }

  private static String remedyForMissing(Path path) {
    Path directory = path.toAbsolutePath().getParent();
    Path name = path.getFileName();
    if (directory == null || name == null || !Files.isDirectory(directory)) {
      return "check the path; its directory does not exist";
    }
    try (Stream<Path> others = Files.list(directory)) {
      List<String> names =
          others.filter(Files::isRegularFile).map(p -> p.getFileName().toString()).toList();
      return NearMiss.of(name.toString(), names)
          .map(near -> "did you mean " + Quoted.text(near) + " in the same directory?")
          .orElse("check the path");
    } catch (IOException e) {
      return "check the path";
    }
  }

  /** The SHA-256 of some bytes, in hexadecimal. */
  public static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256.", e);
    }
  }
}
