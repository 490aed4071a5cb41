/* Factors and solves one symmetric matrix with CHOLMOD (Debian package libsuitesparse-dev).
   Reads coordinate text: first line "n entries", then "row column value" of the lower triangle, from 0.
   Prints times in ms of processor time: ordering, first factor, best factor, best solve. */
#include <stdio.h>
#include <stdlib.h>
#include <time.h>
#include <suitesparse/cholmod.h>

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return 1e3 * t.tv_sec + 1e-6 * t.tv_nsec;
}

int main(int count, char **given) {
  if (count < 2) {
    fprintf(stderr, "usage: cholesky MATRIX\n");
    return 2;
  }
  FILE *in = fopen(given[1], "r");
  long n, entries;
  if (!in || fscanf(in, "%ld %ld", &n, &entries) != 2) {
    fprintf(stderr, "cannot read %s\n", given[1]);
    return 2;
  }
  cholmod_common c;
  cholmod_start(&c);
  cholmod_triplet *t = cholmod_allocate_triplet(n, n, entries, -1, CHOLMOD_REAL, &c);
  for (long i = 0; i < entries; i++) {
    int row, column;
    double value;
    if (fscanf(in, "%d %d %lf", &row, &column, &value) != 3) return 2;
    ((int *)t->i)[i] = row;
    ((int *)t->j)[i] = column;
    ((double *)t->x)[i] = value;
  }
  t->nnz = entries;
  cholmod_sparse *a = cholmod_triplet_to_sparse(t, entries, &c);
  double start = now();
  cholmod_factor *l = cholmod_analyze(a, &c);
  double analysed = now();
  cholmod_factorize(a, l, &c);
  double first = now();
  double factor = first - analysed, solve = 1e300;
  cholmod_dense *b = cholmod_ones(n, 1, CHOLMOD_REAL, &c);
  for (int round = 0; round < 20; round++) {
    double before = now();
    cholmod_factorize(a, l, &c);
    double between = now();
    cholmod_dense *x = cholmod_solve(CHOLMOD_A, l, b, &c);
    double after = now();
    if (between - before < factor) factor = between - before;
    if (after - between < solve) solve = after - between;
    cholmod_free_dense(&x, &c);
  }
  printf("native: n %ld, supernodal %d, order %.1f ms, first factor %.1f ms, best factor %.2f ms, best solve %.2f ms\n",
         n, l->is_super, analysed - start, first - analysed, factor, solve);
  return 0;
}
