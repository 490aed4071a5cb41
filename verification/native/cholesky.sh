#!/bin/sh
# Compares the factor of a walkway's stiffness with CHOLMOD of the Debian package libsuitesparse-dev.
# Not part of the build. Needs gcc and that package; OPENBLAS or reference BLAS, whichever is installed.
# Usage, from the root of the project, after the benchmarks were built (mvn -Pbench ... -DskipTests verify):
#   verification/native/cholesky.sh CLASSPATH [BAYS]
set -e
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
gcc -O2 -o "$work/cholesky" "$here/cholesky.c" -lcholmod -lm
java -Xmx1g -XX:+UseSerialGC -cp "$1" spanledger.bench.WalkwayFactor "${2:-833}" "$work/matrix.txt"
OPENBLAS_NUM_THREADS=1 OMP_NUM_THREADS=1 "$work/cholesky" "$work/matrix.txt"
