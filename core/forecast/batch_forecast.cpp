#include "core/forecast/batch_forecast.h"

#include "core/book/query.h"
#include "core/rooting/prior/recipe_prior.h"

#include <algorithm>
#include <map>
#include <utility>

namespace warmbench::forecast {
namespace {

/// How well mu and ln sigma are known before any check: decisions of this program, without a source.
constexpr double muDeviation = 0.25;
constexpr double logSigmaDeviation = 0.35;

/// One container's checks and pottings, in order of day.
struct History {
    std::vector<const RootCheck*> checks;
    std::vector<const Potting*> pottings;
};

std::map<int, History> historiesOf(const HouseBook& book, const Batch& batch, Day day) {
    std::map<int, History> histories;
    for (const BatchContainer& one : batch.containers) histories[one.number];
    for (const RootCheckId id : book.checksOf(batch.id))
        if (const RootCheck& check = book.get<RootCheck>(id); check.day <= day)
            histories[check.container].checks.push_back(&check);
    for (const PottingId id : book.pottingsOf(batch.id))
        if (const Potting& potting = book.get<Potting>(id); potting.day <= day)
            histories[potting.container].pottings.push_back(&potting);
    const auto byDay = [](const auto* a, const auto* b) { return a->day < b->day; };
    for (auto& [container, history] : histories) {
        std::stable_sort(history.checks.begin(), history.checks.end(), byDay);
        std::stable_sort(history.pottings.begin(), history.pottings.end(), byDay);
    }
    return histories;
}

/// The looks at one container that the checks and the first potting on amount to.
rooting::LookSeries looksOf(const HouseBook& book, const Batch& batch, int container, const History& history,
                            const BatchWarmth& warmth) {
    rooting::LookSeries looks;
    const Potting* potting = history.pottings.empty() ? nullptr : history.pottings.front();
    for (const RootCheck* check : history.checks) {
        if (potting && check->day > potting->day) break;
        const double time = warmth.by(check->day);
        const int there = standing(book, batch, container, check->day - 1);
        if (time > 0 && check->dead < check->examined)
            looks.push_back(rooting::lookOf(time, std::max(there, check->examined), check->examined,
                                            check->dead, check->rooted));
    }
    if (potting) {
        const double time = warmth.by(potting->day);
        const int there = standing(book, batch, container, potting->day - 1);
        if (time > 0 && there > 0)
            looks.push_back(rooting::lookOf(time, there, there, 0, std::min(potting->plants, there)));
    }
    return looks;
}

} // namespace

BatchEvidence evidenceOf(const HouseBook& book, const Batch& batch, const BatchWarmth& warmth, Day day) {
    BatchEvidence found;
    std::vector<rooting::CuttingsLeft> looked;    // for the belief
    std::vector<rooting::CuttingsLeft> standing_; // for the forecast
    double examinedLast = 0;
    double aliveLast = 0;
    for (const auto& [container, history] : historiesOf(book, batch, day)) {
        rooting::LookSeries looks = looksOf(book, batch, container, history, warmth);
        const double there = standing(book, batch, container, day);
        rooting::CuttingsLeft left{looks, there};
        if (!history.pottings.empty()) {
            // What was left behind had no roots that day.
            const double time = warmth.by(history.pottings.back()->day);
            left.looks.clear();
            if (time > 0 && there > 0) left.looks.push_back({time, there, 0, there});
        } else if (!history.checks.empty()) {
            const RootCheck& last = *history.checks.back();
            left.alive = there * (last.examined - last.dead) / last.examined;
            examinedLast += last.examined;
            aliveLast += last.examined - last.dead;
        }
        for (const Potting* potting : history.pottings) found.potted += potting->plants;
        if (!looks.empty()) looked.push_back({std::move(looks), there});
        if (there > 0) standing_.push_back(std::move(left));
    }
    if (examinedLast > 0)
        for (rooting::CuttingsLeft& left : standing_)
            if (left.looks.empty()) left.alive *= aliveLast / examinedLast;
    double alive = found.potted;
    for (const rooting::CuttingsLeft& left : standing_) alive += left.alive;
    const double lostAtPotting = [&] {
        double lost = 0;
        for (const PottingId id : book.pottingsOf(batch.id))
            if (const Potting& potting = book.get<Potting>(id); potting.day <= day) lost += potting.lost;
        return lost;
    }();
    found.deadPart = std::clamp(1 - (alive + lostAtPotting) / batch.cuttings(), 0.0, 1.0);
    for (rooting::CuttingsLeft& lot : rooting::pooled(looked))
        found.evidence.looks.push_back(std::move(lot.looks));
    found.left = rooting::pooled(standing_);
    return found;
}

std::optional<rooting::RootingPrior> priorOf(const Recipe& recipe, double deadPart) {
    const auto need = rooting::rootingNeed(recipe);
    const auto take = rooting::takePrior(recipe);
    if (!need || !take) return std::nullopt;
    return rooting::RootingPrior{rooting::Family::LogLogistic,
                                 rooting::amongAlive(take->share, deadPart),
                                 need->mu,
                                 muDeviation,
                                 std::log(need->sigma),
                                 logSigmaDeviation};
}

BatchForecast::BatchForecast(BatchWarmth warmth, BatchEvidence evidence, const rooting::RootingPrior& prior,
                             Day day)
    : m_warmth(std::move(warmth)), m_evidence(std::move(evidence)), m_belief(prior, m_evidence.evidence),
      m_day(day) {}

std::optional<BatchForecast> BatchForecast::make(const HouseBook& book, const Batch& batch, Day day,
                                                 const MeasuredDay& measured) {
    BatchWarmth warmth(book, batch, measured);
    BatchEvidence evidence = evidenceOf(book, batch, warmth, day);
    const auto prior = priorOf(batch.recipe, evidence.deadPart);
    if (!prior) return std::nullopt;
    return BatchForecast(std::move(warmth), std::move(evidence), *prior, day);
}

BatchForecast::Share BatchForecast::rootedOn(Day day, double level) const {
    const double time = m_warmth.by(day);
    return {m_belief.rootedBy(time).mean, m_belief.rootedInterval(time, level)};
}

std::optional<Day> BatchForecast::readyDay(double sure) const {
    return m_warmth.dayOf(m_belief.readyTime(readyPart, sure));
}

rooting::CountForecast BatchForecast::plants(double wanted, double level) const {
    constexpr double inTheEnd = 1e9; // degree-days
    return plantsByTime(inTheEnd, wanted, level);
}

rooting::CountForecast BatchForecast::plantsBy(Day day, double wanted, double level) const {
    return plantsByTime(std::max(m_warmth.by(std::max(day, m_day)), 1e-9), wanted, level);
}

rooting::CountForecast BatchForecast::plantsByTime(double time, double wanted, double level) const {
    rooting::CountForecast found =
        m_belief.forecast(m_evidence.left, time, wanted - m_evidence.potted, level);
    found.expected += m_evidence.potted;
    found.interval.low += m_evidence.potted;
    found.interval.high += m_evidence.potted;
    found.atLeast.insert(found.atLeast.begin(), static_cast<std::size_t>(m_evidence.potted), 1.0);
    return found;
}

} // namespace warmbench::forecast
