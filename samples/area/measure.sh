#!/usr/bin/env bash
# Time and memory of the study of invented homes, a line a run: on a machine that does nothing else.
# ./measure.sh 10000 100000 1000000, after mvn -B -ntp -P area package -DskipTests -pl samples/area -am
set -euo pipefail
cd "$(dirname "$0")/target"
jar=brinewright-area-0.2.0.jar
main=io.github.brinewright.area.Main
one=-Djava.util.concurrent.ForkJoinPool.common.parallelism=0
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT

run() {
  local name=$1
  shift
  /usr/bin/time -f "$name: %e s, %U s of processor, %M KB" "$@" 2>&1 >"$out/said" | tail -n 1
  grep -h homes "$out/said"
}

for homes in "$@"; do
  run "$homes homes, loop on one core" java -Xmx1g "$one" -cp "$jar:lib/*" $main loop --homes "$homes"
  run "$homes homes, loop" java -Xmx1g -cp "$jar:lib/*" $main loop --homes "$homes"
  for master in 'local[1]' 'local[2]'; do
    run "$homes homes, $master" java -Xmx1g -jar $jar study --invented "$homes" --master "$master" --out "$out"
  done
done
