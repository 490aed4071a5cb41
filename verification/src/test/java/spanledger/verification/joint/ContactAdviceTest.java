package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import spanledger.resistance.joint.ContactMetal;
import spanledger.resistance.joint.ContactTable;
import spanledger.resistance.joint.Surroundings;
import spanledger.tables.ContactTables;

/** Aluminium with every other metal, in all surroundings, has one advice, whichever is first. */
class ContactAdviceTest {

  @Test
  void everyPairWithAluminiumHasAdvice() {
    ContactTable table = ContactTables.standard();
    for (ContactMetal other : ContactMetal.values()) {
      for (Surroundings surroundings : Surroundings.values()) {
        if (other != ContactMetal.ALUMINIUM) {
          assertThat(table.advice(ContactMetal.ALUMINIUM, other, surroundings))
              .as(other.words() + ", " + surroundings.words())
              .hasSize(1)
              .isEqualTo(table.advice(other, ContactMetal.ALUMINIUM, surroundings));
        }
      }
    }
  }

  /** Steel is the metal that the handbook warns of; its advice must not be the mildest. */
  @Test
  void bareSteelOutdoorsIsWarnedOf() {
    assertThat(
            ContactTables.standard()
                .advice(ContactMetal.BARE_STEEL, ContactMetal.ALUMINIUM, Surroundings.OUTDOOR)
                .get(0)
                .advice())
        .contains("Do not");
  }
}
