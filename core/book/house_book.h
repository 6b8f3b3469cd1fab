#pragma once

#include "core/book/change.h"
#include "core/book/spans.h"
#include "core/quantity/result.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace warmbench {

struct Command;

/// Ids of the things that belong to another thing, such as the stays of a batch.
template <class Owner, class Owned>
using Belongings = std::map<Owner, std::set<Owned>>;

namespace detail {
template <class Tuple>
struct ThingMaps;
template <class... E>
struct ThingMaps<std::tuple<E...>> {
    using type = std::tuple<std::map<IdOf<E>, E>...>;
};
} // namespace detail

/// All that a book holds, kind by kind.
using Things = detail::ThingMaps<Kinds>::type;

/// A rule that one thing of a book breaks.
struct BrokenRule {
    const char* kind; ///< kindName<E>.many
    std::int64_t number;
    Refusal refusal;
};

/// The whole state of a nursery in memory. It changes only through commands and the changes that they yield;
/// reading it is a plain query. Copying it is a deep copy.
///
/// Invariant: every rule of rules.h holds for every thing in it.
class HouseBook {
public:
    /// A book with a nursery of default settings and nothing else.
    HouseBook();
    HouseBook(const HouseBook& other);
    HouseBook(HouseBook&& other) noexcept;
    HouseBook& operator=(const HouseBook& other);
    HouseBook& operator=(HouseBook&& other) noexcept;
    ~HouseBook();
    /// The book of all these things, or every rule that they break.
    static std::variant<HouseBook, std::vector<BrokenRule>> make(Things things);

    template <class E>
    [[nodiscard]] const std::map<IdOf<E>, E>& all() const {
        return std::get<std::map<IdOf<E>, E>>(m_things);
    }
    /// The thing, or null where there is none.
    template <class E>
    [[nodiscard]] const E* find(IdOf<E> id) const {
        const auto& things = all<E>();
        const auto found = things.find(id);
        return found == things.end() ? nullptr : &found->second;
    }
    /// The thing, which must be there: for ids that the book's own invariants vouch for.
    template <class E>
    [[nodiscard]] const E& get(IdOf<E> id) const {
        return all<E>().at(id);
    }
    /// The id that the next thing of a kind gets.
    template <class E>
    [[nodiscard]] IdOf<E> nextId() const {
        const auto& things = all<E>();
        return {things.empty() ? 1 : things.rbegin()->first.number + 1};
    }
    [[nodiscard]] const Nursery& nursery() const { return all<Nursery>().begin()->second; }

    [[nodiscard]] const std::set<BenchId>& benchesOf(HouseId id) const { return of(m_benches, id); }
    [[nodiscard]] const std::set<ZoneId>& zonesOf(BenchId id) const { return of(m_zones, id); }
    [[nodiscard]] const std::set<MatRunId>& matRunsOf(ZoneId id) const { return of(m_matRuns, id); }
    [[nodiscard]] const std::set<StayId>& staysIn(ZoneId id) const { return of(m_staysIn, id); }
    [[nodiscard]] const std::set<StayId>& staysOf(BatchId id) const { return of(m_stays, id); }
    [[nodiscard]] const std::set<RootCheckId>& checksOf(BatchId id) const { return of(m_checks, id); }
    [[nodiscard]] const std::set<PottingId>& pottingsOf(BatchId id) const { return of(m_pottings, id); }
    [[nodiscard]] const std::set<LossId>& lossesOf(BatchId id) const { return of(m_losses, id); }
    /// The months of a channel's readings in a place, by their first days.
    [[nodiscard]] const std::map<Day, ReadingMonthId>& readingsOf(const ReadingPlace& place,
                                                                  Channel channel) const {
        static const std::map<Day, ReadingMonthId> none;
        const auto found = m_readings.find({place, channel});
        return found == m_readings.end() ? none : found->second;
    }
    [[nodiscard]] const std::set<BatchId>& batchesStruckOn(Day day) const { return of(m_struckOn, day); }
    /// Losses and pottings of one container of a batch.
    [[nodiscard]] const std::set<LossId>& lossesOf(BatchId id, int container) const {
        return of(m_lossesIn, std::pair(id, container));
    }
    [[nodiscard]] const std::set<PottingId>& pottingsOf(BatchId id, int container) const {
        return of(m_pottingsIn, std::pair(id, container));
    }
    /// Stays in a zone that share a day with from <= day < to, by their first day.
    [[nodiscard]] std::vector<StayId> staysMeeting(ZoneId id, Day from, Day to) const {
        return meeting(m_stayDays, id, from, to);
    }
    /// Runs of a zone's mat that share a day with from <= day < to, by their first day.
    [[nodiscard]] std::vector<MatRunId> matRunsMeeting(ZoneId id, Day from, Day to) const {
        return meeting(m_matRunDays, id, from, to);
    }
    /// Things of a kind that people tell apart by a name, code or day of their own, by that.
    template <HasOwnKey E>
    [[nodiscard]] const std::set<IdOf<E>>& withKey(const OwnKey<E>& key) const {
        return of(std::get<KeyIndex<E>>(m_keys), key);
    }

    /// Does what the command says, whole or not at all.
    /// Refused, with words for a propagator, where it would break a rule.
    Result<Change> perform(const Command& command);
    /// Does a change again, or takes one back (its inverse). Refused where the book is not in the state that
    /// the change was made on, or where it would break a rule; nothing is changed then.
    Outcome apply(const Change& change);

    /// Whether both hold the same things.
    friend bool operator==(const HouseBook& a, const HouseBook& b);

private:
    template <class E>
    using KeyIndex = Belongings<OwnKey<E>, IdOf<E>>;

    template <class Owner, class Owned>
    static const std::set<Owned>& of(const Belongings<Owner, Owned>& belongings, Owner owner) {
        static const std::set<Owned> none;
        const auto found = belongings.find(owner);
        return found == belongings.end() ? none : found->second;
    }

    template <class Id>
    static std::vector<Id> meeting(const std::map<ZoneId, Spans<Id>>& spans, ZoneId zone, Day from, Day to) {
        const auto found = spans.find(zone);
        return found == spans.end() ? std::vector<Id>{} : found->second.meeting(from, to);
    }

    explicit HouseBook(Things things);
    void put(const AnyEdit& edit);
    template <class E>
    void index(const E& thing, bool present);

    Things m_things;
    Belongings<HouseId, BenchId> m_benches;
    Belongings<BenchId, ZoneId> m_zones;
    Belongings<ZoneId, MatRunId> m_matRuns;
    Belongings<ZoneId, StayId> m_staysIn;
    Belongings<BatchId, StayId> m_stays;
    Belongings<BatchId, RootCheckId> m_checks;
    Belongings<BatchId, PottingId> m_pottings;
    Belongings<BatchId, LossId> m_losses;
    Belongings<Day, BatchId> m_struckOn;
    Belongings<std::pair<BatchId, int>, PottingId> m_pottingsIn;
    Belongings<std::pair<BatchId, int>, LossId> m_lossesIn;
    std::map<std::pair<ReadingPlace, Channel>, std::map<Day, ReadingMonthId>> m_readings;
    std::map<ZoneId, Spans<StayId>> m_stayDays;
    std::map<ZoneId, Spans<MatRunId>> m_matRunDays;
    std::tuple<KeyIndex<HandDay>, KeyIndex<House>, KeyIndex<ContainerType>, KeyIndex<Medium>, KeyIndex<Taxon>,
               KeyIndex<Stock>, KeyIndex<Target>, KeyIndex<Batch>>
        m_keys;
};

} // namespace warmbench
