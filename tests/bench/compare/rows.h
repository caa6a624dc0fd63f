// The rows of the comparison, by family. How each row is to be read: DEVELOPERS.md, "Benchmarks".
#pragma once

#include "tests/bench/compare/comparison.h"
#include "tests/bench/compare/stage.h"

namespace gauge::bench {

void addLoadingRows(Comparison& table, Stage& stage);
void addVolumeRows(Comparison& table, Stage& stage);
void addShapeRows(Comparison& table, Stage& stage);
void addWholeRows(Comparison& table, Stage& stage);

} // namespace gauge::bench
