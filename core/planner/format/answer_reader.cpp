#include "core/planner/format/answer_format.h"

#include "core/exchange/json/number.h"
#include "core/exchange/json/text.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/format/reading.h"

#include <algorithm>
#include <array>

namespace warmbench::planner {
namespace {

using json::Children;
using json::Fields;
using json::Pointer;
using json::Value;

constexpr json::Bounds anyInt{.least = 0, .most = std::numeric_limits<int>::max()};

/// The last in version 2 only.
constexpr std::array<std::string_view, 8> costKeys{"total", "unplaced", "late",    "off_ideal",
                                                   "mats",  "moves",    "scatter", "changes"};

/// An answer while it is read.
class AnswerReading {
public:
    explicit AnswerReading(const Problem& problem) : m_problem(problem) {
        for (const Zone& zone : problem.zones) m_zones.try_emplace(zone.id, static_cast<int>(m_zones.size()));
        for (const Batch& batch : problem.batches)
            m_batches.try_emplace(batch.id, static_cast<int>(m_batches.size()));
    }

    Result<Answer> read(Value document) {
        readRoot(document);
        if (m_in.failed()) return *m_in.refusal();
        const auto byBatch = [](const auto& a, const auto& b) { return a.batch < b.batch; };
        std::sort(m_answer.placed.begin(), m_answer.placed.end(), byBatch);
        std::sort(m_answer.unplaced.begin(), m_answer.unplaced.end(), byBatch);
        std::sort(m_answer.mats.begin(), m_answer.mats.end(),
                  [](const ZoneRuns& a, const ZoneRuns& b) { return a.zone < b.zone; });
        return std::move(m_answer);
    }

private:
    void readRoot(Value document) {
        const Pointer root;
        const Fields fields =
            m_in.object(document, root, {"format", "version", "placed", "unplaced", "mats", "cost", "bound"});
        expectText(m_in, fields["format"], root / "format", "warmbench-planning-answer");
        expectVersion(m_in, fields["version"], root / "version", m_problem.version);
        readEach(fields["placed"], root / "placed", [&](Value v, const Pointer& at) { readPlaced(v, at); });
        readEach(fields["unplaced"], root / "unplaced",
                 [&](Value v, const Pointer& at) { readUnplaced(v, at); });
        for (const Batch& batch : m_problem.batches)
            if (!m_listed.count(batch.id))
                m_in.refuse(root / "unplaced",
                            "batch " + json::inQuotes(batch.id) +
                                " is neither placed nor unplaced, expected once in one of them");
        readEach(fields["mats"], root / "mats", [&](Value v, const Pointer& at) { readRuns(v, at); });
        readCost(fields["cost"], root / "cost");
        m_answer.bound = readBound(fields["bound"], root / "bound");
    }

    template <class Read>
    void readEach(Value value, const Pointer& at, Read read) {
        Children items = m_in.list(value, at);
        while (const auto item = items.next()) {
            read(*item, at / items.index());
            if (m_in.failed()) return;
        }
    }

    int readBatch(Value value, const Pointer& at) {
        const int batch = readReference(m_in, value, at, m_batches, "batch");
        if (!m_in.failed()) addName(m_in, at, m_listed, value.string(), m_listed.size());
        return batch;
    }

    void readPlaced(Value value, const Pointer& at) {
        const Fields fields = m_in.object(value, at, {"id", "strike_day", "stays"});
        PlacedBatch placed;
        placed.batch = readBatch(fields["id"], at / "id");
        placed.strikeDay = static_cast<int>(m_in.integer(fields["strike_day"], at / "strike_day", anyInt));
        readEach(fields["stays"], at / "stays",
                 [&](Value stay, const Pointer& here) { placed.stays.push_back(readStay(stay, here)); });
        m_answer.placed.push_back(std::move(placed));
    }

    PlacedStay readStay(Value value, const Pointer& at) {
        const Fields fields = m_in.object(value, at, {"zone", "from", "to", "slots"});
        PlacedStay stay;
        stay.zone = readReference(m_in, fields["zone"], at / "zone", m_zones, "zone");
        stay.from = static_cast<int>(m_in.integer(fields["from"], at / "from", anyInt));
        stay.to = static_cast<int>(m_in.integer(fields["to"], at / "to", anyInt));
        if (m_in.failed()) return stay;
        const Zone& zone = m_problem.zones[static_cast<std::size_t>(stay.zone)];
        readEach(fields["slots"], at / "slots", [&](Value slot, const Pointer& here) {
            const WideRect rect = readRect(m_in, slot, here);
            stay.slots.push_back(onGrid(m_in, here, rect, zone));
        });
        return stay;
    }

    void readUnplaced(Value value, const Pointer& at) {
        const Fields fields = m_in.object(value, at, {"id", "reason"});
        UnplacedBatch unplaced;
        unplaced.batch = readBatch(fields["id"], at / "id");
        unplaced.reason = m_in.name(fields["reason"], at / "reason");
        m_answer.unplaced.push_back(std::move(unplaced));
    }

    void readRuns(Value value, const Pointer& at) {
        const Fields fields = m_in.object(value, at, {"zone", "runs"});
        ZoneRuns runs;
        runs.zone = readReference(m_in, fields["zone"], at / "zone", m_zones, "zone");
        if (m_in.failed()) return;
        addName(m_in, at / "zone", m_running, fields["zone"].string(), m_running.size());
        const Zone& zone = m_problem.zones[static_cast<std::size_t>(runs.zone)];
        readEach(fields["runs"], at / "runs",
                 [&](Value run, const Pointer& here) { runs.runs.push_back(readRun(run, here, zone)); });
        m_answer.mats.push_back(std::move(runs));
    }

    MatRun readRun(Value value, const Pointer& at, const Zone& zone) {
        Children numbers = m_in.list(value, at, 3, 3);
        MatRun run;
        run.from = static_cast<int>(m_in.integer(numbers.next().value_or(Value{}), at / 0, anyInt));
        run.to = static_cast<int>(m_in.integer(numbers.next().value_or(Value{}), at / 1, anyInt));
        const Value warmth = numbers.next().value_or(Value{});
        const std::int64_t tenths = readTemperature(m_in, warmth, at / 2);
        const auto known = std::find_if(zone.setPoints.begin(), zone.setPoints.end(),
                                        [&](const SetPoint& point) { return point.tenths == tenths; });
        if (known == zone.setPoints.end())
            m_in.refuse(at / 2, json::shown(warmth) + " is no set-point of " + json::inQuotes(zone.id));
        run.setPoint = static_cast<int>(known - zone.setPoints.begin());
        return run;
    }

    void readCost(Value value, const Pointer& at) {
        const bool hasChanges = m_problem.version == 2;
        const Fields fields = m_in.object(value, at, json::Keys(costKeys).first(hasChanges ? 8 : 7), {});
        const auto part = [&](const char* key) { return m_in.number(fields[key], at / key, 3); };
        m_answer.cost.unplaced = part("unplaced");
        m_answer.cost.late = part("late");
        m_answer.cost.offIdeal = part("off_ideal");
        m_answer.cost.mats = part("mats");
        m_answer.cost.moves = part("moves");
        m_answer.cost.scatter = part("scatter");
        if (hasChanges) m_answer.cost.changes = part("changes");
        if (part("total") != m_answer.cost.total())
            m_in.refuse(at / "total",
                        "found " + json::shown(fields["total"]) + ", expected the sum of the parts");
    }

    std::int64_t readBound(Value value, const Pointer& at) { return m_in.numberRoundedDown(value, at, 3); }

    const Problem& m_problem;
    Names m_zones;
    Names m_batches;
    Names m_listed;  ///< batches that stand in the answer
    Names m_running; ///< zones that have runs
    json::Reader m_in;
    Answer m_answer;
};

} // namespace

Result<Answer> readAnswer(std::string_view text, const Problem& problem) {
    if (text.size() > largestFile) return tooLarge("");
    const auto document = json::parse(text);
    if (!document) return document.refusal();
    return AnswerReading(problem).read(*document);
}

} // namespace warmbench::planner
