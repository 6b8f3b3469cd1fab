#include "core/planner/verify/slot_use.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace warmbench::planner::verify {

std::vector<std::string> SlotUse::clashes() {
    std::sort(m_uses.begin(), m_uses.end(), [&](const Use& a, const Use& b) {
        return std::tie(a.zone, a.slot, a.from, a.to, m_names[a.who]) <
               std::tie(b.zone, b.slot, b.from, b.to, m_names[b.who]);
    });
    std::vector<std::string> sentences;
    std::set<std::pair<std::uint32_t, std::uint32_t>> told;
    const Use* before = nullptr; // the use of the slot that lasts longest so far
    for (const Use& use : m_uses) {
        const bool sameSlot = before && before->zone == use.zone && before->slot == use.slot;
        if (sameSlot && use.from < before->to && told.insert({before->who, use.who}).second) {
            const Zone& zone = m_problem.zones[static_cast<std::size_t>(use.zone)];
            sentences.push_back(m_names[before->who] + " and " + m_names[use.who] + " both cover slot [" +
                                std::to_string(use.slot / zone.cols) + ", " +
                                std::to_string(use.slot % zone.cols) + "] of " + zone.id + " on day " +
                                std::to_string(use.from));
        }
        if (!sameSlot || use.to > before->to) before = &use;
    }
    return sentences;
}

} // namespace warmbench::planner::verify
