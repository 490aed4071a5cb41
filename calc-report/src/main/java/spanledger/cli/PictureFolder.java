package spanledger.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spanledger.picture.Drawing;
import spanledger.picture.SvgFile;
import spanledger.picture.structure.StructureAlbum;

/** A folder whose SVG files are the pictures of the last run, and of no earlier one. */
final class PictureFolder {

  private static final String SUFFIX = ".svg";

  private final Path folder;
  private final List<String> names = new ArrayList<>();
  private boolean made;

  PictureFolder(Path folder) {
    this.folder = folder;
  }

  /** Writes pictures beside their places. */
  void writeBeside(StructureAlbum album) throws IOException {
    if (!album.pictures().isEmpty() && !Files.isDirectory(folder)) {
      Files.createDirectory(folder);
      made = true;
    }
    for (Map.Entry<String, Drawing> picture : album.pictures().entrySet()) {
      String name = picture.getKey() + SUFFIX;
      names.add(name);
      Files.writeString(beside(name), SvgFile.of(picture.getValue()), StandardCharsets.UTF_8);
    }
  }

  /** Moves them in, and removes those of earlier runs that have no successor. */
  void moveIn() throws IOException {
    for (String name : names) {
      Files.move(
          beside(name),
          folder.resolve(name),
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.ATOMIC_MOVE);
      made = false;
    }
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (DirectoryStream<Path> present = Files.newDirectoryStream(folder, "*" + SUFFIX)) {
      for (Path one : present) {
        if (!names.contains(String.valueOf(one.getFileName()))) {
          Files.delete(one);
        }
      }
    }
  }

  /** Removes what was written beside and not moved in. */
  void removeLeftovers() throws IOException {
    for (String name : names) {
      Files.deleteIfExists(beside(name));
    }
    if (made) {
      Files.deleteIfExists(folder);
    }
  }

  private Path beside(String name) {
    return folder.resolve("." + name + ".part");
  }
}
