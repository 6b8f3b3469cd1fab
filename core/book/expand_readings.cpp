#include "core/book/draft.h"
#include "core/book/readings.h"

#include <map>

namespace warmbench {
namespace {

/// The months of one channel in a place as the draft has them.
std::map<Day, ReadingMonth> monthsOf(const Draft& draft, const ReadingPlace& place, Channel channel) {
    std::set<ReadingMonthId> known;
    for (const auto& [month, id] : draft.book().readingsOf(place, channel)) known.insert(id);
    std::map<Day, ReadingMonth> months;
    for (ReadingMonth& one : draft.standing<ReadingMonth>(known, [&](const ReadingMonth& other) {
             return other.place() == place && other.channel == channel;
         }))
        months.emplace(one.month, std::move(one));
    return months;
}

} // namespace

Outcome changeFor(Draft& draft, const KeepReadings& keep) {
    for (const ChannelReadings& one : keep.channels) {
        const auto before = monthsOf(draft, keep.place, one.channel);
        auto parts = withReadings(before, keep.place, one);
        if (!parts) return parts.refusal();
        for (ReadingMonth& after : *parts) {
            const auto found = before.find(after.month);
            if (found == before.end())
                draft.add(std::move(after));
            else
                draft.replace(found->second, after);
        }
    }
    return std::nullopt;
}

Outcome changeFor(Draft& draft, const RemoveReadings& remove) {
    for (const Channel channel : {Channel::RootZone, Channel::Air, Channel::Humidity}) {
        if (remove.channel && *remove.channel != channel) continue;
        for (const auto& [month, before] : monthsOf(draft, remove.place, channel)) {
            if (month >= remove.to || climate::nextMonth(month) <= remove.from) continue;
            const ReadingMonth after = withoutDays(before, remove.from, remove.to);
            if (after.packed.empty())
                draft.remove(before);
            else
                draft.replace(before, after);
        }
    }
    return std::nullopt;
}

} // namespace warmbench
