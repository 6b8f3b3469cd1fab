#include "core/planner/search/bins.h"

#include <algorithm>
#include <limits>

namespace warmbench::planner::search {

namespace {

constexpr int mostBins = 8; ///< filled anew together

/// What a stay that begins on one day only costs and lasts.
const StayTerms& onlyTerms(const StayModel& stay, const StayOption& option) {
    return stay.terms(option, stay.firstStart);
}

bool sameOptions(const StayModel& a, const StayModel& b) {
    return std::equal(a.options.begin(), a.options.end(), b.options.begin(), b.options.end(),
                      [&](const StayOption& x, const StayOption& y) {
                          return x.zoneClass == y.zoneClass && x.state == y.state &&
                                 onlyTerms(a, x).length() == onlyTerms(b, y).length();
                      });
}

/// One stay of single slots that begins on one day only, free in all else.
bool isItem(const BatchModel& batch, const Batch& wanted) {
    return batch.single && !batch.pinned && batch.changeCost == 0 && !wanted.stock &&
           batch.stays.size() == 1 && batch.strikeFirst == batch.strikeLast &&
           !batch.stays.front().options.empty();
}

} // namespace

std::optional<Bins> Bins::of(const Model& model, std::uint64_t seed) {
    if (model.batches.empty() || !isItem(model.batches[0], model.problem->batches[0])) return {};
    const BatchModel& first = model.batches[0];
    std::int64_t cuttings = 0;
    for (std::size_t b = 0; b < model.batches.size(); ++b) {
        const BatchModel& batch = model.batches[b];
        if (!isItem(batch, model.problem->batches[b]) || batch.strikeFirst != first.strikeFirst ||
            !sameOptions(batch.stays[0], first.stays[0]))
            return {};
        cuttings += model.problem->batches[b].cuttings;
    }
    if (model.hands[at(first.strikeFirst)] < cuttings || first.stays[0].options.size() != 1) return {};
    const StayOption& option = first.stays[0].options[0];
    const ZoneClass& kind = model.classes[at(option.zoneClass)];
    Bins bins(model, seed);
    bins.m_zones = kind.zones;
    bins.m_capacity = model.zones[at(kind.zones[0])].slots;
    bins.m_mostLoss = static_cast<int>(std::min<std::int64_t>(
        std::int64_t{bins.m_capacity} * bins.m_capacity / 224, std::numeric_limits<int>::max() / 2));
    for (const int zone : kind.zones) {
        const ZoneModel& place = model.zones[at(zone)];
        if (place.slots != bins.m_capacity || !place.held.empty() || place.placed) return {};
    }
    const int day = first.strikeFirst;
    const int length = onlyTerms(first.stays[0], option).length();
    bins.m_stand = {0, option.state, day, day + length};
    bins.m_zoneCost =
        kind.hasMat ? kind.costAt(option.state) * (std::min(day + length, model.days) - day) : 0;
    if (bins.m_zoneCost == 0) return {};
    for (int batch = 0; batch < static_cast<int>(model.batches.size()); ++batch) {
        const BatchModel& made = model.batches[at(batch)];
        bins.m_direct.push_back(onlyTerms(made.stays[0], made.stays[0].options[0]).offIdeal() +
                                made.late(day + length));
        if (bins.m_direct.back() + bins.m_zoneCost > made.value) return {};
        bins.m_fixedCost += bins.m_direct.back();
        bins.m_loose.push_back(batch);
    }
    bins.refill();
    bins.m_bins = bins.m_fresh;
    return bins;
}

void Bins::round() {
    if (m_bins.size() < 2) return;
    chooseBins();
    m_loose.clear();
    std::int64_t before = 0;
    for (const int bin : m_chosen) {
        const Bin& chosen = m_bins[at(bin)];
        m_loose.insert(m_loose.end(), chosen.batches.begin(), chosen.batches.end());
        before += std::int64_t{chosen.used} * chosen.used;
    }
    refill();
    std::int64_t after = 0;
    for (const Bin& bin : m_fresh) after += std::int64_t{bin.used} * bin.used;
    if (m_fresh.size() > m_chosen.size()) return;
    if (m_fresh.size() == m_chosen.size() && before - after > m_random.below(m_mostLoss + 1)) return;
    for (std::size_t i = 0; i < m_fresh.size(); ++i) std::swap(m_bins[at(m_chosen[i])], m_fresh[i]);
    if (m_fresh.size() == m_chosen.size()) return;
    std::sort(m_chosen.begin() + static_cast<std::ptrdiff_t>(m_fresh.size()), m_chosen.end(),
              std::greater<>());
    for (std::size_t i = m_fresh.size(); i < m_chosen.size(); ++i) {
        std::swap(m_bins[at(m_chosen[i])], m_bins.back());
        m_bins.pop_back();
    }
}

void Bins::chooseBins() {
    const int count = static_cast<int>(m_bins.size());
    const int wanted = std::min(count, 2 + m_random.below(mostBins - 1));
    m_chosen.clear();
    // The first is the emptiest of some; the others come as they may.
    int emptiest = m_random.below(count);
    for (int i = 0; i < 6; ++i) {
        const int other = m_random.below(count);
        if (m_bins[at(other)].used < m_bins[at(emptiest)].used) emptiest = other;
    }
    m_chosen.push_back(emptiest);
    while (static_cast<int>(m_chosen.size()) < wanted) {
        const int other = m_random.below(count);
        if (std::find(m_chosen.begin(), m_chosen.end(), other) == m_chosen.end()) m_chosen.push_back(other);
    }
}

void Bins::refill() {
    for (std::size_t i = m_loose.size(); i > 1; --i)
        std::swap(m_loose[i - 1], m_loose[at(m_random.below(static_cast<int>(i)))]);
    m_fresh.clear();
    while (!m_loose.empty()) fill(m_fresh.emplace_back());
}

void Bins::fill(Bin& bin) {
    const auto largest = std::max_element(m_loose.begin(), m_loose.end(),
                                          [&](int a, int b) { return slotsOf(a) < slotsOf(b); });
    std::swap(*largest, m_loose.back());
    bin.batches.push_back(m_loose.back());
    bin.used = slotsOf(m_loose.back());
    m_loose.pop_back();
    const int room = m_capacity - bin.used;
    constexpr int unreached = -1;
    m_reached.assign(at(room + 1), unreached);
    m_reached[0] = 0;
    int fullest = 0;
    for (int i = 0; i < static_cast<int>(m_loose.size()) && fullest < room; ++i) {
        const int slots = slotsOf(m_loose[at(i)]);
        for (int sum = std::min(room, fullest + slots); sum >= slots; --sum) {
            if (m_reached[at(sum)] != unreached || m_reached[at(sum - slots)] == unreached) continue;
            m_reached[at(sum)] = i;
            fullest = std::max(fullest, sum);
        }
    }
    bin.used += fullest;
    // Walking back meets batches in falling order of index, so that taking one out moves none still to come.
    while (fullest > 0) {
        const int i = m_reached[at(fullest)];
        fullest -= slotsOf(m_loose[at(i)]);
        bin.batches.push_back(m_loose[at(i)]);
        m_loose[at(i)] = m_loose.back();
        m_loose.pop_back();
    }
}

std::vector<Plan> Bins::plans() const {
    std::vector<Plan> plans(m_direct.size());
    for (std::size_t bin = 0; bin < m_bins.size(); ++bin)
        for (const int batch : m_bins[bin].batches) {
            Stand stand = m_stand;
            stand.zone = m_zones[bin];
            plans[at(batch)] = {batch, stand.from, m_direct[at(batch)], {stand}, {}};
        }
    return plans;
}

} // namespace warmbench::planner::search
