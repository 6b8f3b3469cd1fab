#pragma once

#include "core/exchange/json/reader.h"
#include "core/planner/verify/groups.h"
#include "core/planner/verify/slot_use.h"
#include "core/planner/verify/verify.h"
#include "core/planner/verify/warmth.h"

#include <map>
#include <unordered_map>

namespace warmbench::planner::verify {

/// One check of one answer; for core/planner/verify only. Each entry of the answer is read by itself, so that
/// one that cannot be read hides nothing of the others.
class AnswerCheck {
public:
    explicit AnswerCheck(const Problem& problem);

    /// Checks the answer that `document` should be.
    Verdict run(json::Value document);

private:
    using Value = json::Value;
    using Pointer = json::Pointer;

    /// One stay as the answer gives it.
    struct Claim {
        int zone = 0;
        std::int64_t from = 0;
        std::int64_t to = 0;
        std::vector<Rect> slots; ///< sorted
    };

    /// A placed batch from one stay to the next.
    struct Course {
        const Batch& batch;
        std::int64_t day;            ///< on which the next stay should begin
        std::optional<Claim> before; ///< the stay before
        bool isChanged;              ///< it does not stand as it did in the plan before
    };

    [[nodiscard]] bool isFull() const { return m_verdict.violations.size() >= mostViolations; }
    void violated(std::string sentence);
    /// Whether a reader failed; its refusal is then a violation.
    bool reported(const json::Reader& in);
    [[nodiscard]] const Zone& zoneAt(int index) const {
        return m_problem.zones[static_cast<std::size_t>(index)];
    }
    MatStates& statesOf(int zone) { return m_states[static_cast<std::size_t>(zone)]; }
    template <class Check>
    void checkEach(Value list, const Pointer& at, Check check);
    /// The index of a zone by its id; 0 where that is refused.
    int knownZone(json::Reader& in, Value value, const Pointer& at) const;
    const Batch* newBatch(Value id, const Pointer& entry);

    void checkMat(Value value, const Pointer& at);
    void checkRun(json::Reader& in, Value value, const Pointer& at, int zone, std::int64_t& end);
    void checkHeld(const Held& held);
    void checkUnplaced(Value value, const Pointer& at);
    void checkAllListed();
    void checkLabour();
    void checkStock();
    void checkCost(const json::Fields& fields, const Pointer& at);
    void checkBound(Value value, const Pointer& at);

    void checkPlaced(Value value, const Pointer& at);
    void checkStrikeDay(const Batch& batch, std::int64_t day);
    /// Checks one stay and takes the course on; false where it cannot be read as one.
    bool checkStay(Value value, const Pointer& at, const StayRule& rule, Course& course,
                   const std::string& who);
    void checkWarmth(const StayRule& rule, const Claim& claim, const std::string& who);
    /// Checks a stay's slots by themselves; what they cover.
    Covered checkSlots(const Claim& claim, const Batch& batch, const std::string& who);
    /// Whether a stay stands where the stay of the plan before did that has the same place in the order.
    static bool isAsBefore(const Claim& claim, const PlacedStay& before);
    void checkPinnedPlace(const Claim& claim, const Batch& batch, const std::string& who);
    /// The state of a zone's mat over a stay; a change during it is a violation.
    MatState constantState(int zone, std::int64_t from, std::int64_t to, const std::string& who);

    const Problem& m_problem;
    std::unordered_map<std::string, int> m_zones;
    std::unordered_map<std::string, const Batch*> m_batches;
    std::vector<MatStates> m_states; ///< by zone
    std::vector<char> m_hasRuns;     ///< by zone
    SlotUse m_use;
    std::map<std::int64_t, std::int64_t> m_struck;               ///< cuttings by day
    std::map<int, std::map<std::int64_t, std::int64_t>> m_taken; ///< cuttings by stock and day
    std::unordered_map<std::string, std::string> m_listed;       ///< place of each batch in the answer
    Verdict m_verdict;
};

} // namespace warmbench::planner::verify
