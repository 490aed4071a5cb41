package spanledger.section.warping;

import spanledger.section.mesh.SectionMesh;

/** What the finite elements found out about an outline, with the fields themselves for pictures. */
public final class FieldProperties {

  private final TorsionProperties torsion;
  private final ShearProperties shear;
  private final AsymmetryProperties asymmetry;
  private final FieldReport report;
  private final SectionMesh mesh;
  private final double[] warping;
  private final StressAtNodes torsionStress;
  private final StressAtNodes shearStressY;
  private final StressAtNodes shearStressZ;

  FieldProperties(
      TorsionProperties torsion,
      ShearProperties shear,
      AsymmetryProperties asymmetry,
      FieldReport report,
      SectionMesh mesh,
      double[] warping,
      StressAtNodes torsionStress,
      StressAtNodes shearStressY,
      StressAtNodes shearStressZ) {
    this.torsion = torsion;
    this.shear = shear;
    this.asymmetry = asymmetry;
    this.report = report;
    this.mesh = mesh;
    this.warping = warping;
    this.torsionStress = torsionStress;
    this.shearStressY = shearStressY;
    this.shearStressZ = shearStressZ;
  }

  public TorsionProperties torsion() {
    return torsion;
  }

  public ShearProperties shear() {
    return shear;
  }

  public AsymmetryProperties asymmetry() {
    return asymmetry;
  }

  public FieldReport report() {
    return report;
  }

  public SectionMesh mesh() {
    return mesh;
  }

  /**
   * The warping function about the shear centre at a node of the mesh, mm²: axial displacement per
   * unit twist.
   */
  public double warping(int node) {
    return warping[node];
  }

  /** Shear stresses at the nodes per N·mm of torsion. */
  public StressAtNodes torsionStress() {
    return torsionStress;
  }

  /** Shear stresses at the nodes per N of shear along y. */
  public StressAtNodes shearStressY() {
    return shearStressY;
  }

  /** Shear stresses at the nodes per N of shear along z. */
  public StressAtNodes shearStressZ() {
    return shearStressZ;
  }

  /**
   * The largest shear stress of shear in any direction.
   *
   * @param angle of the force, to the left of y, rad
   * @return MPa per N
   */
  public PeakStress peakShear(double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double[] y = new double[mesh.nodeCount()];
    double[] z = new double[mesh.nodeCount()];
    for (int n = 0; n < y.length; n++) {
      y[n] = cos * shearStressY.y(n) + sin * shearStressZ.y(n);
      z[n] = cos * shearStressY.z(n) + sin * shearStressZ.z(n);
    }
    return new StressAtNodes(mesh, y, z).peak(report.sharpCorners(), report.leftOut());
  }
}
