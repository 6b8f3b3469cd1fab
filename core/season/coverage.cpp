#include "core/season/coverage.h"

#include "core/book/command.h"
#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/quantity/decimal.h"
#include "core/rooting/beta_binomial.h"
#include "core/rooting/prior/recipe_prior.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

namespace warmbench::season {
namespace {

/// Of bands: a part of (1 - 90 %) / 2 at each end.
constexpr double bandTail = 0.05;
constexpr double likelyAsNot = 0.5;
/// A warmer mat is worth a word when it brings a batch so many days forward.
constexpr int daysWorthHeat = 2;

/// What cuttings of which nothing is known but their recipe give, with its band.
struct Lot {
    double expected = 0;
    rooting::Interval band;
};

Lot lotOf(std::int64_t cuttings, rooting::BetaShape share) {
    Lot lot;
    lot.expected = static_cast<double>(cuttings) * share.alpha / (share.alpha + share.beta);
    std::int64_t low = 0;
    std::int64_t high = 0;
    for (std::int64_t plants = 1; plants <= cuttings; ++plants) {
        const double atLeast = rooting::betaBinomialAtLeast(plants, cuttings, share);
        if (atLeast >= 1 - bandTail) low = plants;
        if (atLeast > bandTail) high = plants;
    }
    lot.band = {static_cast<double>(low), static_cast<double>(high)};
    return lot;
}

/// Adds up what batches give; distances to the ends of their bands add as squares.
class BandSum {
public:
    void add(double expected, const rooting::Interval& band) {
        m_expected += expected;
        m_below += (expected - band.low) * (expected - band.low);
        m_above += (band.high - expected) * (band.high - expected);
    }
    [[nodiscard]] double expected() const { return m_expected; }
    [[nodiscard]] rooting::Interval band() const {
        return {std::max(0.0, m_expected - std::sqrt(m_below)), m_expected + std::sqrt(m_above)};
    }

private:
    double m_expected = 0;
    double m_below = 0;
    double m_above = 0;
};

std::optional<Day> lastDayOf(const HouseBook& book, BatchId batch) {
    std::optional<Day> last;
    for (const Stay* stay : staysInOrder(book, batch)) last = last ? std::max(*last, stay->to) : stay->to;
    return last;
}

/// When a batch is likely to be potted on; nothing where that is not known.
std::optional<Day> potOnDay(const HouseBook& book, const Batch& batch,
                            const forecast::BookForecast& forecast) {
    const auto found = forecast.batches().find(batch.id);
    if (found == forecast.batches().end() || !found->second.rooting || !found->second.likelyReady)
        return batch.state == BatchState::Ended ? std::nullopt : lastDayOf(book, batch.id);
    // What nobody has weaned by now is weaned today at the earliest.
    return std::max(*found->second.likelyReady, forecast.day()) +
           (batch.recipe.weanDays.value + batch.recipe.growOnDays.value);
}

void countBatches(TargetCoverage& coverage, const HouseBook& book, const std::vector<const Batch*>& batches,
                  const forecast::BookForecast& forecast) {
    BandSum sum;
    std::int64_t unknown = 0;
    std::optional<rooting::BetaShape> share;
    for (const Batch* batch : batches) {
        (batch->state == BatchState::Planned ? coverage.planned : coverage.struck) += batch->cuttings();
        const int potted = pottedOn(book, batch->id);
        coverage.potted += potted;
        if (const auto day = potOnDay(book, *batch, forecast))
            coverage.ready = coverage.ready ? std::max(*coverage.ready, *day) : *day;
        if (const auto found = forecast.batches().find(batch->id); found != forecast.batches().end()) {
            sum.add(found->second.expected, found->second.plants);
            continue;
        }
        sum.add(potted, {static_cast<double>(potted), static_cast<double>(potted)});
        if (batch->state == BatchState::Ended) continue;
        unknown += standing(book, *batch, Day::last());
        if (const auto prior = rooting::takePrior(batch->recipe); prior && !share) share = prior->share;
    }
    if (share && unknown > 0) {
        const Lot lot = lotOf(unknown, *share);
        sum.add(lot.expected, lot.band);
    }
    coverage.expected = sum.expected();
    coverage.band = sum.band();
}

CoverageState stateOf(const TargetCoverage& coverage, const Target& target) {
    if (coverage.potted >= target.plants) return CoverageState::Met;
    if (coverage.need.state == NeedState::Covered)
        return coverage.lateDays > 0 ? CoverageState::Late : CoverageState::OnCourse;
    if (coverage.need.state == NeedState::Later) return CoverageState::Waiting;
    return CoverageState::Short;
}

Phrase daysWords(int days) {
    return days == 1 ? phrase("1 day") : phrase("%1 days", days);
}

/// A warmer set-point for the batch that a late target waits for, and the days that it brings. The book is
/// changed to try it, and changed back.
std::optional<Phrase> warmerMat(HouseBook& book, BatchId id, Day today) {
    const Batch& batch = book.get<Batch>(id);
    const Stay* stay = stayOn(book, batch.id, today);
    if (batch.state != BatchState::Struck || !stay || stay->stage != Stage::Rooting || stay->to <= today)
        return std::nullopt;
    const Day until = stay->to;
    const Zone zone = book.get<Zone>(stay->zone);
    const auto before = forecast::BatchForecast::make(book, batch, today);
    const auto readyNow = before ? before->readyDay(likelyAsNot) : std::nullopt;
    if (!zone.matOn(today) || !readyNow) return std::nullopt;
    const Celsius now = expectedRootZone(book, zone, today);
    for (const Celsius setPoint : zone.mat->setPoints) {
        if (setPoint <= now || setPoint > batch.recipe.rootZoneHigh.value) continue;
        const Day end = std::max(until, *readyNow);
        const auto change =
            book.perform(Command{SetMatRuns{zone.id, today, end, {{{}, {}, today, end, setPoint}}}});
        if (!change) continue;
        // What stands beside it must like the warmth too.
        bool harms = false;
        for (const StayId beside : book.staysMeeting(zone.id, today, today + 1))
            for (const Trouble& trouble : troublesOn(book, book.get<Stay>(beside), today))
                harms = harms || trouble.kind == TroubleKind::TooWarm;
        const auto after = forecast::BatchForecast::make(book, batch, today);
        const auto ready = after ? after->readyDay(likelyAsNot) : std::nullopt;
        if (book.apply(change->inverse())) throw std::logic_error("a mat that was tried can't be taken back");
        if (harms || !ready || *readyNow - *ready < daysWorthHeat) continue;
        return phrase("set the mat of %1 to %2: %3 is likely to be ready %4 sooner", zoneTitle(book, zone.id),
                      setPoint, batch.code, daysWords(*readyNow - *ready));
    }
    return std::nullopt;
}

void addRemedies(TargetCoverage& coverage, HouseBook& book, const std::vector<const Batch*>& batches,
                 const forecast::BookForecast& forecast) {
    const Target& target = book.get<Target>(coverage.target);
    if (coverage.state == CoverageState::Short) {
        const TargetNeed& need = coverage.need;
        if (need.way)
            coverage.remedies.push_back(phrase(
                need.way->cuttings == 1
                    ? (need.way->late
                           ? pattern("strike %1 %2 cutting from %3 to %4; it will be late all the same")
                           : pattern("strike %1 %2 cutting from %3 to %4"))
                : need.way->late ? pattern("strike %1 %2 cuttings from %3 to %4; they will be late all "
                                           "the same")
                                 : pattern("strike %1 %2 cuttings from %3 to %4"),
                need.way->cuttings, Phrase(woodNames[static_cast<std::size_t>(need.way->recipe.wood)]),
                need.way->whole.first, need.way->whole.last));
        else
            coverage.remedies.push_back(need.why);
    }
    if (coverage.lateDays == 0 || coverage.state == CoverageState::Met) return;
    for (const Batch* batch : batches)
        if (potOnDay(book, *batch, forecast) == coverage.ready)
            if (auto words = warmerMat(book, batch->id, forecast.day())) coverage.remedies.push_back(*words);
    if (coverage.potted > 0 || coverage.sure >= target.plants)
        coverage.remedies.push_back(
            phrase("tell who waits for them: %1 late, by %2", daysWords(coverage.lateDays), *coverage.ready));
}

} // namespace

std::vector<TargetCoverage> coverageOf(const HouseBook& book, const RecipeLibrary& library,
                                       const PlanRequest& request, const forecast::BookForecast& forecast) {
    std::map<TargetId, std::vector<const Batch*>> batches;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.target) batches[*batch.target].push_back(&batch);
    HouseBook tried = book;
    std::vector<TargetCoverage> list;
    for (TargetNeed& need : targetNeeds(book, library, request, forecast)) {
        const Target& target = book.get<Target>(need.target);
        TargetCoverage coverage;
        coverage.target = target.id;
        coverage.sure = need.expected;
        coverage.need = std::move(need);
        countBatches(coverage, book, batches[target.id], forecast);
        if (coverage.ready) coverage.lateDays = std::max(0, *coverage.ready - target.due);
        coverage.state = stateOf(coverage, target);
        addRemedies(coverage, tried, batches[target.id], forecast);
        list.push_back(std::move(coverage));
    }
    // The needs are in order of the targets' days already.
    std::stable_sort(list.begin(), list.end(), [](const TargetCoverage& a, const TargetCoverage& b) {
        return std::min(a.state, CoverageState::Waiting) < std::min(b.state, CoverageState::Waiting);
    });
    return list;
}

} // namespace warmbench::season
