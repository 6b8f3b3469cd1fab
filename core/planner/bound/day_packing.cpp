#include "core/planner/bound/day_packing.h"

#include "core/planner/index.h"

#include <algorithm>
#include <limits>

namespace warmbench::planner {
namespace {

/// Upper bounds are raised by this share, more than rounding can take from them.
constexpr double margin = 1e-9;

/// Offers that are nearly in order are put in order by insertion, longer lists by a sort.
constexpr std::size_t mostInserted = 64;

} // namespace

void DayPacking::take(std::vector<Item>& items, const std::vector<double>& prices) {
    m_offers.clear();
    m_unpaid.clear();
    for (const Item& item : items) {
        const double value = prices[at(item.name)];
        if (value <= 0) {
            m_unpaid.push_back(item);
            continue;
        }
        const double perSlot = item.slots > 0 ? value / item.slots : std::numeric_limits<double>::max();
        m_offers.push_back({perSlot, value, item});
        if (items.size() > mostInserted) continue;
        for (std::size_t i = m_offers.size(); --i > 0 && m_offers[i - 1].perSlot < m_offers[i].perSlot;)
            std::swap(m_offers[i - 1], m_offers[i]);
    }
    if (items.size() > mostInserted)
        std::sort(m_offers.begin(), m_offers.end(),
                  [](const Offer& a, const Offer& b) { return a.perSlot > b.perSlot; });
    const auto unpaid = std::transform(m_offers.begin(), m_offers.end(), items.begin(),
                                       [](const Offer& offer) { return offer.item; });
    std::copy(m_unpaid.begin(), m_unpaid.end(), unpaid);
}

double DayPacking::relaxed(int slots) const {
    double paid = 0;
    int left = slots;
    for (const Offer& offer : m_offers) {
        if (offer.item.slots > slots) continue;
        if (offer.item.slots > left) return (paid + left * offer.perSlot) * (1 + margin);
        paid += offer.value;
        left -= offer.item.slots;
    }
    return paid;
}

double DayPacking::fillGreedily(int slots, std::size_t& filled, double& relaxed) {
    m_greedy.clear();
    filled = m_offers.size();
    double paid = 0;
    int left = slots;
    for (std::size_t i = 0; i < m_offers.size(); ++i) {
        const Offer& offer = m_offers[i];
        if (offer.item.slots > slots) continue;
        if (offer.item.slots > left) {
            if (filled < m_offers.size()) continue;
            filled = i;
            relaxed = (paid + left * offer.perSlot) * (1 + margin);
            continue;
        }
        paid += offer.value;
        left -= offer.item.slots;
        m_greedy.push_back(i);
    }
    if (filled == m_offers.size()) relaxed = paid;
    return paid;
}

double DayPacking::best(int slots) {
    std::size_t filled = 0;
    double relaxed = 0;
    const double greedy = fillGreedily(slots, filled, relaxed);
    m_chosen = m_greedy;
    if (relaxed <= greedy) return greedy;
    m_sure.clear();
    m_open.clear();
    const double perSlot = m_offers[filled].perSlot;
    double sure = 0;
    int room = slots;
    for (std::size_t i = 0; i < m_offers.size(); ++i) {
        const Offer& offer = m_offers[i];
        if (offer.item.slots > slots) continue;
        const double above = offer.value - offer.item.slots * perSlot;
        if (relaxed - (i < filled ? above : -above) > greedy) {
            m_open.push_back(i);
        } else if (i < filled) {
            m_sure.push_back(i);
            sure += offer.value;
            room -= offer.item.slots;
        }
    }
    const double open = decideOpen(room);
    if (sure + open <= greedy) return greedy;
    m_chosen = m_sure;
    auto left = at(room);
    for (std::size_t i = m_open.size(); i-- > 0;) {
        const double* row = m_best.data() + i * m_width;
        if (row[m_width + left] == row[left]) continue;
        m_chosen.push_back(m_open[i]);
        left -= at(m_offers[m_open[i]].item.slots);
    }
    return sure + open;
}

double DayPacking::decideOpen(int room) {
    m_width = at(room) + 1;
    m_best.resize(std::max(m_best.size(), (m_open.size() + 1) * m_width));
    std::fill_n(m_best.begin(), m_width, 0);
    double* before = m_best.data();
    for (const std::size_t i : m_open) {
        const Offer& offer = m_offers[i];
        double* after = before + m_width;
        const std::size_t size = std::min(at(offer.item.slots), m_width);
        std::copy_n(before, size, after);
        for (std::size_t used = size; used < m_width; ++used)
            after[used] = std::max(before[used], before[used - size] + offer.value);
        before = after;
    }
    return before[m_width - 1];
}

void DayPacking::chosen(std::vector<int>& names) const {
    for (const std::size_t i : m_chosen) names.push_back(m_offers[i].item.name);
}

} // namespace warmbench::planner
