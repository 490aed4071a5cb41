package spanledger.job.dxf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import spanledger.job.source.JobFile;
import spanledger.job.source.Quoted;

/**
 * A drawing as groups.
 *
 * @param tags the groups in order, comments left out
 * @param sha256 the SHA-256 of the file's bytes, in hexadecimal
 */
record DxfFile(List<DxfTag> tags, String sha256) {

  private static final int COMMENT = 999;

  DxfFile {
    tags = List.copyOf(tags);
  }

  /** Loads a drawing, unless it cannot be read as one. */
  static Optional<DxfFile> load(Path path, DxfLog log) {
    try (InputStream stream = Files.newInputStream(path)) {
      byte[] bytes = stream.readNBytes(JobFile.LARGEST + 1);
      if (bytes.length > JobFile.LARGEST) {
        log.error(
            0,
            "a file of more than " + JobFile.LARGEST / (1024 * 1024) + " MiB",
            "the drawing of one section, which is far smaller",
            "save only the section");
        return Optional.empty();
      }
      return ofBytes(bytes, log);
    } catch (NoSuchFileException e) {
      return refuse(log, "no file of this name", "check the path");
    } catch (AccessDeniedException e) {
      return refuse(log, "a file that may not be read", "allow yourself to read it");
    } catch (IOException e) {
      return refuse(
          log,
          "a file that cannot be read: " + Quoted.shortened(String.valueOf(e.getMessage())),
          "check the path and the disk");
    }
  }

  private static Optional<DxfFile> refuse(DxfLog log, String found, String remedy) {
    log.error(0, found, "a DXF drawing", remedy);
    return Optional.empty();
  }

  private static Optional<DxfFile> ofBytes(byte[] bytes, DxfLog log) {
    for (int i = 0; i < Math.min(bytes.length, 256); i++) {
      if (bytes[i] == 0) {
        log.error(
            0,
            "a binary file",
            "a DXF drawing in ASCII",
            "save the drawing again as DXF, ASCII (text)");
        return Optional.empty();
      }
    }
    return tags(decoded(bytes), log).map(tags -> new DxfFile(tags, sha256(bytes)));
  }

  /** Old drawings are in a code page of 8 bits; it matters for names of layers only. */
  private static String decoded(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }

  private static Optional<List<DxfTag>> tags(String text, DxfLog log) {
    List<String> lines = text.lines().toList();
    List<DxfTag> tags = new ArrayList<>();
    for (int i = 0; i + 1 < lines.size(); i += 2) {
      int code;
      try {
        code = Integer.parseInt(lines.get(i).strip());
      } catch (NumberFormatException e) {
        log.error(
            i + 1,
            Quoted.text(lines.get(i).strip()) + " where a group code should be",
            "a DXF drawing: lines in pairs of a whole number and a value",
            "save the drawing again as DXF, ASCII");
        return Optional.empty();
      }
      DxfTag tag = new DxfTag(code, lines.get(i + 1).strip(), i + 2);
      if (tag.is(0, "EOF")) {
        return Optional.of(tags);
      }
      if (code != COMMENT) {
        tags.add(tag);
      }
    }
    log.error(
        lines.size(),
        lines.isEmpty() ? "an empty file" : "the end of the file before \"EOF\"",
        "a whole DXF drawing",
        "save the drawing again; this file is cut off or is none");
    return Optional.empty();
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256.", e);
    }
  }
}
