package spanledger.picture.structure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import spanledger.job.Job;
import spanledger.picture.Drawing;
import spanledger.picture.Lettering;
import spanledger.picture.joint.JointPicture;
import spanledger.verdict.Assessment;

/**
 * The pictures of a structure.
 *
 * @param pictures by their short names, which serve as file names, in the order of reading
 * @param lettering draws their words
 */
public record StructureAlbum(Map<String, Drawing> pictures, Lettering lettering) {

  public StructureAlbum {
    pictures = Collections.unmodifiableMap(new LinkedHashMap<>(pictures));
  }

  /** One without pictures. */
  public static StructureAlbum none(Lettering lettering) {
    return new StructureAlbum(Map.of(), lettering);
  }

  /**
   * All pictures of a job.
   *
   * @param job the structure
   * @param assessment what was found about it
   */
  public static StructureAlbum of(Job job, Assessment assessment, Lettering lettering) {
    Subject subject = Subject.of(job, lettering);
    Map<String, Drawing> album = new LinkedHashMap<>();
    album.put("general", GeneralPicture.of(subject));
    album.putAll(PlanPicture.all(subject));
    album.putAll(ElevationPicture.all(subject));
    album.putAll(StairPicture.all(subject));
    album.putAll(GuardrailPicture.all(subject));
    album.put("utilisation", UtilisationPicture.of(subject, assessment.verdicts()));
    MomentPicture.of(subject, assessment).ifPresent(d -> album.put("moments", d));
    DeflectionPicture.of(subject, assessment).ifPresent(d -> album.put("deflection", d));
    ModePicture.of(subject, assessment).ifPresent(d -> album.put("buckling", d));
    album.putAll(JointPicture.all(assessment, lettering));
    return new StructureAlbum(album, lettering);
  }
}
