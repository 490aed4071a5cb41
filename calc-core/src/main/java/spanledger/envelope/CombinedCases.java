package spanledger.envelope;

import java.util.List;
import spanledger.action.Combination;

/**
 * A combination as sums over the solved cases: which cases, with which factors. Looked up once, it
 * serves every effect.
 */
final class CombinedCases {

  /** Cases that act together. */
  private static final class Sum {
    private final int[] cases;
    private final double[] factors;

    Sum(Responses responses, Combination combination, List<Combination.Term> terms) {
      cases = new int[terms.size()];
      factors = new double[terms.size()];
      for (int i = 0; i < cases.length; i++) {
        cases[i] = responses.indexOf(terms.get(i).loadCase());
        factors[i] = combination.factor(terms.get(i));
      }
    }

    double of(double[] byCase) {
      double sum = 0;
      for (int i = 0; i < cases.length; i++) {
        sum += factors[i] * byCase[cases[i]];
      }
      return sum;
    }
  }

  private final Sum fixed;
  private final Sum[] options;

  CombinedCases(Responses responses, Combination combination) {
    fixed = new Sum(responses, combination, combination.terms());
    options =
        combination.options().stream()
            .map(option -> new Sum(responses, combination, option.terms()))
            .toArray(Sum[]::new);
  }

  /** What always acts does to an effect of which the size in each case is given. */
  double fixed(double[] byCase) {
    return fixed.of(byCase);
  }

  /** How many free parts there are. */
  int options() {
    return options.length;
  }

  /** What a free part does to it. */
  double option(int which, double[] byCase) {
    return options[which].of(byCase);
  }
}
