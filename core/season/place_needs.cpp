#include "core/season/place_needs.h"

#include "core/book/query.h"

#include <algorithm>
#include <map>

namespace warmbench::season {
namespace {

/// A thing and all that it leads to.
std::vector<std::size_t> reached(std::size_t thing, const std::vector<std::vector<std::size_t>>& next) {
    std::vector<std::size_t> found{thing};
    for (std::size_t i = 0; i < found.size(); ++i)
        for (const std::size_t one : next[found[i]])
            if (std::find(found.begin(), found.end(), one) == found.end()) found.push_back(one);
    std::sort(found.begin(), found.end());
    return found;
}

} // namespace

PlaceNeeds::PlaceNeeds(const HouseBook& book, const Proposal& proposal)
    : m_needs(proposal.lines.size() + proposal.notPlaced.size()), m_neededBy(m_needs.size()) {
    std::map<BatchId, std::size_t> thingOf;
    for (std::size_t i = 0; i < proposal.lines.size(); ++i)
        if (proposal.lines[i].change != LineChange::New) thingOf[proposal.lines[i].batch.id] = i;
    for (std::size_t i = 0; i < proposal.notPlaced.size(); ++i)
        if (proposal.notPlaced[i].planned)
            thingOf[proposal.notPlaced[i].planned->id] = proposal.lines.size() + i;
    for (std::size_t i = 0; i < proposal.lines.size(); ++i) {
        std::vector<std::size_t>& needs = m_needs[i];
        for (const Stay& stay : proposal.lines[i].stays)
            for (const StayId id : book.staysMeeting(stay.zone, stay.from, stay.to)) {
                const Stay& there = book.get<Stay>(id);
                const auto found = thingOf.find(there.batch);
                if (found == thingOf.end() || found->second == i || !shareSlots(stay, there)) continue;
                if (std::find(needs.begin(), needs.end(), found->second) == needs.end())
                    needs.push_back(found->second);
            }
        for (const std::size_t needed : needs) m_neededBy[needed].push_back(i);
    }
}

std::vector<std::size_t> PlaceNeeds::neededBy(std::size_t thing) const {
    return reached(thing, m_needs);
}

std::vector<std::size_t> PlaceNeeds::needing(std::size_t thing) const {
    return reached(thing, m_neededBy);
}

} // namespace warmbench::season
