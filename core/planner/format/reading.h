#pragma once

#include "core/exchange/json/reader.h"
#include "core/planner/format/slot_owners.h"
#include "core/planner/problem.h"

#include <string>
#include <string_view>
#include <unordered_map>

/// The parts from which the reader of problems is made; for core/planner/format only.
namespace warmbench::planner {

/// Index of each thing by its id.
using Names = std::unordered_map<std::string, int>;

/// A problem while it is read. What was read is complete and consistent unless `in` has failed.
struct Reading {
    json::Reader in;
    Problem problem;
    Names zones;
    Names stocks;
    Names batches;
    Names occupants;   ///< held and batches, whose ids are unique together
    SlotOwners pinned; ///< by the index of the batch

    [[nodiscard]] const Zone& zone(int index) const { return problem.zones[static_cast<std::size_t>(index)]; }
};

/// A file above largestFile; `place` begins the place of the refusal.
Refusal tooLarge(std::string place);
/// Refuses anything but the string `expected`, or but that version.
void expectText(json::Reader& in, json::Value value, const json::Pointer& at, const std::string& expected);
void expectVersion(json::Reader& in, json::Value value, const json::Pointer& at, int version);

// Single values. Temperatures and degree-days are tenths, money is hundredths.
std::int64_t readTemperature(json::Reader& in, json::Value value, const json::Pointer& at);
std::int64_t readMoney(json::Reader& in, json::Value value, const json::Pointer& at);
/// A day from 0 on as the planner counts it: one beyond farthestDay is farthestDay.
int planningDay(std::int64_t day);
Cover readCover(json::Reader& in, json::Value value, const json::Pointer& at);
/// Fields `degree_days`, `base_c` and `cap_c`, or `days`, of a stay or something held.
Duration readDuration(json::Reader& in, const json::Fields& fields, const json::Pointer& at);

struct TemperatureRange {
    std::int64_t low = 0;
    std::int64_t high = 0;
};
/// Fields `low_c` and `high_c`; the first above the second is refused.
TemperatureRange readRange(json::Reader& in, const json::Fields& fields, const json::Pointer& at);

/// Lets `names` know `id` by `index`; refused where it knows it already.
void addName(json::Reader& in, const json::Pointer& at, Names& names, const std::string& id,
             std::size_t index);
/// The index of something by its id; `kind` says what is looked for.
int readReference(json::Reader& in, json::Value value, const json::Pointer& at, const Names& names,
                  const char* kind);

/// A slot entry `[row, col, height, width]`, which need not lie on any grid.
struct WideRect {
    std::int64_t row = 0;
    std::int64_t col = 0;
    std::int64_t height = 1;
    std::int64_t width = 1;
};
WideRect readRect(json::Reader& in, json::Value value, const json::Pointer& at);
/// The same as a place on the grid of `zone`; refused where it leaves it.
SlotRect onGrid(json::Reader& in, const json::Pointer& at, const WideRect& rect, const Zone& zone);

// The lists of a problem, in the order in which they are read.
void readZones(Reading& reading, json::Value value, const json::Pointer& at);
void readStocks(Reading& reading, json::Value value, const json::Pointer& at);
void readHeld(Reading& reading, json::Value value, const json::Pointer& at);
void readBatches(Reading& reading, json::Value value, const json::Pointer& at);
/// The plan that was made before, in the shape of an answer's `placed`, into the batches that it placed.
void readPrevious(Reading& reading, json::Value value, const json::Pointer& at);
/// The pin of `batch`, which is the next of the problem; `containers` is their exact number.
Pin readPin(Reading& reading, json::Value value, const json::Pointer& at, const Batch& batch,
            std::int64_t containers);
/// Refuses pins that take the same slots on the same day, or together more than a day's labour.
void checkPinsTogether(Reading& reading, const json::Pointer& batches);
/// Refuses something held that no set-point of its zone suits, nor off.
void checkHeldSuits(Reading& reading, const json::Pointer& held);

} // namespace warmbench::planner
