#include "core/planner/format/problem_format.h"

#include "core/exchange/file/file.h"
#include "core/exchange/json/text.h"
#include "core/planner/format/reading.h"
#include "core/quantity/day.h"

#include <array>

namespace warmbench::planner {
namespace {

using json::Pointer;
using json::Value;

std::string readDate(json::Reader& in, Value value, const Pointer& at) {
    std::string date = in.name(value, at);
    if (!Day::fromIso(date))
        in.refuse(at, "found " + json::shown(value) + ", expected a date such as 2027-02-01");
    return date;
}

int readHorizon(json::Reader& in, Value value, const Pointer& at) {
    return static_cast<int>(in.integer(value, at, {.least = 1, .most = farthestDay}));
}

std::vector<std::int64_t> readCapacity(json::Reader& in, Value value, const Pointer& at) {
    if (value.kind() != json::Kind::List) return {in.integer(value, at, {.least = 0})};
    std::vector<std::int64_t> capacity;
    json::Children days = in.list(value, at, 1);
    while (const auto day = days.next()) {
        capacity.push_back(in.integer(*day, at / days.index(), {.least = 0}));
        if (in.failed()) break;
    }
    return capacity;
}

constexpr std::array<std::string_view, 6> requiredFields{"format", "version", "start",
                                                         "days",   "zones",   "batches"};
/// The last two in version 2 only.
constexpr std::array<std::string_view, 6> optionalFields{"stocks",       "strike_capacity", "held",
                                                         "scatter_cost", "previous",        "change_cost"};

/// 2 where the problem says so and has a field of that version. Else 1, whatever it says.
int versionOf(Value problem) {
    if (problem.kind() != json::Kind::Object) return 1;
    bool isSecond = false;
    bool tellsOfAPlan = false;
    json::Children members(problem);
    while (const auto member = members.next()) {
        json::Reader in;
        if (members.key() == "version") isSecond = in.integer(*member, {}) == 2;
        if (members.key() == "previous" || members.key() == "change_cost") tellsOfAPlan = true;
    }
    return isSecond && tellsOfAPlan ? 2 : 1;
}

void expectKnownVersion(json::Reader& in, Value value, const Pointer& at) {
    if (in.integer(value, at) != 1)
        in.refuse(at,
                  "found version " + json::shown(value) + ", expected 1, or 2 with previous or change_cost");
}

void readRoot(Reading& reading, Value value) {
    const Pointer root;
    json::Reader& in = reading.in;
    Problem& problem = reading.problem;
    problem.version = versionOf(value);
    const json::Fields fields = in.object(value, root, requiredFields,
                                          json::Keys(optionalFields).first(problem.version == 2 ? 6 : 4));
    expectText(in, fields["format"], root / "format", "warmbench-planning-problem");
    if (problem.version == 1) expectKnownVersion(in, fields["version"], root / "version");
    problem.start = readDate(in, fields["start"], root / "start");
    problem.days = readHorizon(in, fields["days"], root / "days");
    if (const auto cost = fields.find("scatter_cost"))
        problem.scatterCost = readMoney(in, *cost, root / "scatter_cost");
    readZones(reading, fields["zones"], root / "zones");
    if (const auto stocks = fields.find("stocks")) readStocks(reading, *stocks, root / "stocks");
    if (const auto capacity = fields.find("strike_capacity"))
        problem.strikeCapacity = readCapacity(in, *capacity, root / "strike_capacity");
    if (const auto held = fields.find("held")) readHeld(reading, *held, root / "held");
    readBatches(reading, fields["batches"], root / "batches");
    if (const auto previous = fields.find("previous")) readPrevious(reading, *previous, root / "previous");
    if (const auto cost = fields.find("change_cost"))
        problem.changeCost = readMoney(in, *cost, root / "change_cost");
    checkPinsTogether(reading, root / "batches");
    checkHeldSuits(reading, root / "held");
}

} // namespace

Result<Problem> readProblem(std::string_view text) {
    if (text.size() > largestFile) return tooLarge("");
    const auto document = json::parse(text);
    if (!document) return document.refusal();
    Reading reading;
    readRoot(reading, *document);
    if (reading.in.failed()) return *reading.in.refusal();
    return std::move(reading.problem);
}

Result<Problem> readProblemFile(const std::filesystem::path& path) {
    std::error_code unknownSize;
    const std::uintmax_t size = std::filesystem::file_size(path, unknownSize);
    if (!unknownSize && size > largestFile) return tooLarge(path.string() + ": ");
    const auto text = exchange::readFile(path, largestFile + 1);
    if (!text) return text.refusal();
    auto problem = readProblem(*text);
    // Also where the pointer is empty, so that the place is always `file: pointer`.
    if (!problem) return Refusal{path.string() + ": " + problem.refusal().place, problem.refusal().what};
    return problem;
}

} // namespace warmbench::planner
