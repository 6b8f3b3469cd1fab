#include "core/forecast/book_forecast.h"

#include "core/book/query.h"
#include "core/book/weaned.h"
#include "core/rooting/prior/recipe_prior.h"

#include <algorithm>
#include <atomic>
#include <set>
#include <thread>
#include <type_traits>

namespace warmbench::forecast {
namespace {

constexpr double bandLevel = 0.9;
/// So few are not worth a second thread.
constexpr std::size_t fewBatches = 8;

/// The most that is reached with the sureness.
int surely(const std::vector<double>& atLeast, double sureness) {
    std::size_t count = 0;
    while (count + 1 < atLeast.size() && atLeast[count + 1] >= sureness - 1e-9) ++count;
    return static_cast<int>(count);
}

/// Chance of at least 0, 1, 2, ... of the sum of two independent numbers.
std::vector<double> summed(const std::vector<double>& a, const std::vector<double>& b) {
    const auto chanceOf = [](const std::vector<double>& atLeast, std::size_t i) {
        return atLeast[i] - (i + 1 < atLeast.size() ? atLeast[i + 1] : 0);
    };
    std::vector<double> sum(a.size() + b.size() - 1, 0);
    for (std::size_t i = 0; i < a.size(); ++i) {
        const double chance = chanceOf(a, i);
        if (chance < 1e-12) continue;
        for (std::size_t j = 0; j < b.size(); ++j) sum[i + j] += chance * chanceOf(b, j);
    }
    double above = 0;
    for (std::size_t i = sum.size(); i-- > 0;) sum[i] = above += sum[i];
    return sum;
}

const Stay* rootingStay(const HouseBook& book, BatchId batch) {
    const Stay* last = nullptr;
    for (const StayId id : book.staysOf(batch)) {
        const Stay& stay = book.get<Stay>(id);
        if (stay.stage == Stage::Rooting && (!last || stay.to > last->to)) last = &stay;
    }
    return last;
}

} // namespace

BookForecast::BookForecast(const HouseBook& book, Day day, MeasuredDay measured,
                           std::optional<double> sureness)
    : m_day(day), m_sureness(sureness.value_or(book.nursery().surenessPermille / 1000.0)),
      m_measured(std::move(measured)) {
    std::vector<BatchId> all;
    for (const auto& [id, batch] : book.all<Batch>()) all.push_back(id);
    compute(book, all);
}

BookForecast::BookForecast(const HouseBook& book, Day day, const std::set<BatchId>& only,
                           std::optional<double> sureness)
    : m_day(day), m_sureness(sureness.value_or(book.nursery().surenessPermille / 1000.0)) {
    compute(book, std::vector<BatchId>(only.begin(), only.end()));
}

void BookForecast::compute(const HouseBook& book, const std::vector<BatchId>& batches) {
    std::vector<std::optional<Seen>> seen(batches.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < batches.size(); i = next++) seen[i] = see(book, batches[i]);
    };
    {
        // Where readings are asked for as well, whoever answers may not be ready for two at once.
        std::optional<std::jthread> other;
        if (!m_measured && batches.size() > fewBatches) other.emplace(work);
        work();
    }
    for (std::size_t i = 0; i < batches.size(); ++i)
        if (seen[i]) keep(batches[i], std::move(*seen[i]));
}

void BookForecast::keep(BatchId id, Seen seen) {
    m_forecasts.emplace(id, std::move(seen.forecast));
    m_outlooks.emplace(id, seen.outlook);
    m_atLeast.emplace(id, std::move(seen.atLeast));
}

void BookForecast::compute(const HouseBook& book, BatchId id) {
    m_forecasts.erase(id);
    m_outlooks.erase(id);
    m_atLeast.erase(id);
    if (auto seen = see(book, id)) keep(id, std::move(*seen));
}

std::optional<BookForecast::Seen> BookForecast::see(const HouseBook& book, BatchId id) const {
    const Batch* batch = book.find<Batch>(id);
    if (!batch || batch->state != BatchState::Struck || batch->strikeDay > m_day) return {};
    auto made = BatchForecast::make(book, *batch, m_day, m_measured);
    if (!made) return {};
    const BatchForecast& forecast = *made;
    BatchOutlook outlook;
    outlook.batch = id;
    outlook.struck = batch->cuttings();
    outlook.potted = static_cast<int>(forecast.evidence().potted);
    for (const rooting::CuttingsLeft& left : forecast.evidence().left) outlook.alive += left.alive;
    for (const rooting::LookSeries& looks : forecast.evidence().evidence.looks)
        for (const rooting::Look& look : looks) outlook.examined += look.examined;
    outlook.rooted = forecast.rootedOn(m_day, bandLevel);
    rooting::CountForecast plants = forecast.plants(0, bandLevel);
    outlook.expected = plants.expected;
    outlook.plants = plants.interval;
    outlook.surePlants = surely(plants.atLeast, m_sureness);
    outlook.likelyReady = forecast.readyDay(0.5);
    outlook.sureReady = forecast.readyDay(m_sureness);
    outlook.rooting = isRooting(book, id, m_day);
    if (const Stay* stay = rootingStay(book, id)) outlook.assumedReady = stay->to;
    return Seen{std::move(*made), outlook, std::move(plants.atLeast)};
}

void BookForecast::update(const HouseBook& book, const Change& change) {
    std::set<BatchId> touched;
    bool all = false;
    const auto touchZone = [&](ZoneId zone) {
        for (const StayId id : book.staysIn(zone)) touched.insert(book.get<Stay>(id).batch);
    };
    for (const AnyEdit& edit : change.edits)
        std::visit(
            [&]<class E>(const Edit<E>& one) {
                const E& thing = one.after ? *one.after : *one.before;
                if constexpr (std::is_same_v<E, Batch>)
                    touched.insert(thing.id);
                else if constexpr (requires { thing.batch; })
                    touched.insert(thing.batch);
                else if constexpr (std::is_same_v<E, MatRun>)
                    touchZone(thing.zone);
                else if constexpr (std::is_same_v<E, ReadingMonth>)
                    thing.zone ? touchZone(*thing.zone) : void();
                else if constexpr (std::is_same_v<E, House> || std::is_same_v<E, Nursery>)
                    all = true;
            },
            edit);
    if (all)
        for (const auto& [id, batch] : book.all<Batch>()) touched.insert(id);
    for (const BatchId id : touched) compute(book, id);
}

const BatchForecast* BookForecast::find(BatchId batch) const {
    const auto found = m_forecasts.find(batch);
    return found == m_forecasts.end() ? nullptr : &found->second;
}

TargetOutlook BookForecast::target(const HouseBook& book, TargetId id) const {
    TargetOutlook outlook;
    outlook.target = id;
    outlook.wanted = book.get<Target>(id).plants;
    std::vector<double> atLeast{1};
    double planned = 0;
    std::optional<rooting::BetaShape> share;
    for (const auto& [batchId, batch] : book.all<Batch>()) {
        if (batch.target != id) continue;
        if (const auto found = m_outlooks.find(batchId); found != m_outlooks.end()) {
            const BatchOutlook& one = found->second;
            outlook.expected += one.expected;
            atLeast = summed(atLeast, m_atLeast.at(batchId));
            if (const auto ready = one.rooting ? one.likelyReady : std::nullopt) {
                // What nobody has weaned by now is weaned today at the earliest.
                const Day potOn =
                    std::max(*ready, m_day) + (batch.recipe.weanDays.value + batch.recipe.growOnDays.value);
                outlook.ready = outlook.ready ? std::max(*outlook.ready, potOn) : potOn;
            }
            continue;
        }
        const int potted = pottedOn(book, batchId);
        outlook.expected += potted;
        atLeast.insert(atLeast.begin(), static_cast<std::size_t>(potted), 1.0);
        if (batch.state == BatchState::Ended) continue;
        planned += standing(book, batch, Day::last());
        if (const auto prior = rooting::takePrior(batch.recipe); prior && !share) share = prior->share;
    }
    // Cuttings that nothing is known of but their recipe share its take: one lot.
    if (share && planned > 0) {
        const auto count = static_cast<std::int64_t>(planned);
        std::vector<double> lot;
        for (std::int64_t i = 0; i <= count; ++i)
            lot.push_back(rooting::betaBinomialAtLeast(i, count, *share));
        outlook.expected += planned * share->alpha / (share->alpha + share->beta);
        atLeast = summed(atLeast, lot);
    }
    outlook.surePlants = surely(atLeast, m_sureness);
    const auto wanted = static_cast<std::size_t>(std::max(0, outlook.wanted));
    outlook.sureness = wanted < atLeast.size() ? std::min(1.0, atLeast[wanted]) : 0;
    return outlook;
}

} // namespace warmbench::forecast
