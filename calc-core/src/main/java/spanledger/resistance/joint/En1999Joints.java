package spanledger.resistance.joint;

import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;

/**
 * Joints by EN 1999-1-1:2007, from memory; where that is silent, by EN 1993-1-8:2005.
 *
 * @param figures partial factors and factors of bolts, for example those of id {@code en-1999-1-1}
 */
public record En1999Joints(CodeFigures figures) implements JointCode {

  @Override
  public String id() {
    return figures.id();
  }

  @Override
  public String title() {
    return figures.title();
  }

  @Override
  public JointCheck boltShear(Bolt bolt, ShearPlanes planes, Feed shear) {
    return En1999BoltShear.check(figures, bolt, planes, shear);
  }

  @Override
  public JointCheck boltTension(Bolt bolt, String name, Feed tension) {
    return En1999BoltTension.check(figures, bolt, name, tension);
  }

  @Override
  public JointCheck boltShearAndTension(JointCheck shear, JointCheck tension) {
    return En1999BoltTension.check(shear, tension);
  }

  @Override
  public JointCheck bearing(Bolt bolt, HoleInPlate hole, Feed force) {
    return En1999Bearing.check(figures, bolt, hole, force);
  }
}
