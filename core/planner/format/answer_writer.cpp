#include "core/planner/format/answer_format.h"

#include "core/exchange/file/file.h"
#include "core/exchange/json/text.h"
#include "core/planner/format/writing.h"
#include "core/quantity/decimal.h"

namespace warmbench::planner {
namespace {

using json::inQuotes;

std::string unplacedText(const Problem& problem, const UnplacedBatch& unplaced) {
    return "{ \"id\": " + inQuotes(problem.batches[static_cast<std::size_t>(unplaced.batch)].id) +
           ", \"reason\": " + inQuotes(unplaced.reason) + " }";
}

std::string runsText(const Problem& problem, const ZoneRuns& zoneRuns) {
    const Zone& zone = problem.zones[static_cast<std::size_t>(zoneRuns.zone)];
    const auto run = [&](const MatRun& each) {
        return "[" + std::to_string(each.from) + ", " + std::to_string(each.to) + ", " +
               decimalText(zone.setPoints[static_cast<std::size_t>(each.setPoint)].tenths, 1) + "]";
    };
    return "{ \"zone\": " + inQuotes(zone.id) + ", \"runs\": " + list(zoneRuns.runs, run) + " }";
}

std::string costText(const Problem& problem, const Cost& cost) {
    return "{ \"total\": " + decimalText(cost.total(), 3) +
           ", \"unplaced\": " + decimalText(cost.unplaced, 3) + ", \"late\": " + decimalText(cost.late, 3) +
           ", \"off_ideal\": " + decimalText(cost.offIdeal, 3) + ", \"mats\": " + decimalText(cost.mats, 3) +
           ", \"moves\": " + decimalText(cost.moves, 3) + ", \"scatter\": " + decimalText(cost.scatter, 3) +
           (problem.version == 2 ? ", \"changes\": " + decimalText(cost.changes, 3) : "") + " }";
}

} // namespace

std::string answerText(const Problem& problem, const Answer& answer) {
    const auto placed = [&](const PlacedBatch& each) {
        return placedText(problem, problem.batches[static_cast<std::size_t>(each.batch)].id, each.strikeDay,
                          each.stays);
    };
    const auto unplaced = [&](const UnplacedBatch& each) { return unplacedText(problem, each); };
    const auto runs = [&](const ZoneRuns& each) { return runsText(problem, each); };
    return "{\n"
           "  \"format\": \"warmbench-planning-answer\", \"version\": " +
           std::to_string(problem.version) +
           ",\n"
           "  \"placed\": " +
           lines(answer.placed, placed, 2) + ",\n  \"unplaced\": " + lines(answer.unplaced, unplaced, 2) +
           ",\n  \"mats\": " + lines(answer.mats, runs, 2) +
           ",\n  \"cost\": " + costText(problem, answer.cost) +
           ",\n  \"bound\": " + decimalText(answer.bound, 3) + "\n}\n";
}

Outcome writeAnswerFile(const std::filesystem::path& path, const Problem& problem, const Answer& answer) {
    return exchange::replaceFile(path, answerText(problem, answer));
}

} // namespace warmbench::planner
