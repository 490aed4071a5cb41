package spanledger.picture.section;

import java.util.LinkedHashMap;
import java.util.Map;
import spanledger.picture.Drawing;
import spanledger.picture.Lettering;
import spanledger.section.SectionStudy;
import spanledger.section.outline.Outline;

/** The pictures of a section. */
public final class SectionAlbum {

  private SectionAlbum() {}

  /** The pictures of the shape alone: its dimensions and its plates. */
  public static Map<String, Drawing> ofShape(SectionStudy study, String name, Lettering lettering) {
    Map<String, Drawing> album = new LinkedHashMap<>();
    album.put("outline", OutlinePicture.of(study, name, lettering));
    album.put("plates", PlatePicture.of(study, name, lettering));
    return album;
  }

  /**
   * All pictures by their short names, which serve as file names, in the order of reading.
   *
   * @param name what the section is called
   */
  public static Map<String, Drawing> of(SectionStudy study, String name, Lettering lettering) {
    Map<String, Drawing> album = ofShape(study, name, lettering);
    Outline outline = study.parts().get(0);
    study
        .field()
        .ifPresent(
            field -> {
              album.put("warping", FieldPicture.warping(outline, field, name, lettering));
              album.put("torsion", FieldPicture.torsion(outline, field, name, lettering));
              album.put("shear-z", FieldPicture.shearAlongZ(outline, field, name, lettering));
              album.put("shear-y", FieldPicture.shearAlongY(outline, field, name, lettering));
            });
    return album;
  }
}
