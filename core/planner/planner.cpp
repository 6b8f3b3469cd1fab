#include "core/planner/planner.h"

#include "core/planner/bound/bound_beside.h"
#include "core/planner/bound/cost_step.h"
#include "core/planner/bound/late_release.h"
#include "core/planner/bound/share_bound.h"
#include "core/planner/bound/zone_kinds.h"
#include "core/planner/horizon.h"
#include "core/planner/in_time.h"
#include "core/planner/reasons/compromises.h"
#include "core/planner/reasons/reasons.h"
#include "core/planner/refusals.h"
#include "core/planner/search/stream.h"
#include "core/planner/search/team.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <chrono>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace warmbench::planner {

namespace {

using search::Cooling;
using search::Found;
using search::Stream;
using search::Team;

/// A problem with more days times zones than this is not tried: its tables would not fit into memory.
constexpr std::int64_t mostZoneDays = 20'000'000;

/// One call of `solve`.
class Run {
public:
    Run(std::shared_ptr<const Problem> problem, const Options& options, std::stop_token stop)
        : m_owned(std::move(problem)), m_options(options), m_stop(std::move(stop)),
          m_model(m_problem, {options.threads, 0, [this] { return m_stop.stop_requested(); }}) {}

    Result<Solved> solve() {
        if (const Outcome refusal = impossible(m_model)) return refusalOf(*refusal);
        if (Team::suits(m_model)) beginTeam();
        if (!m_team) begin(m_streams[0]);
        if (m_options.rounds)
            m_team ? searchTogether(*m_options.rounds) : searchByRounds(*m_options.rounds);
        else
            m_team ? searchTogether() : searchByTime();
        Found& best = m_team ? m_team->found() : bestStream()->found();
        if (const Outcome refusal = brokenPin(m_problem, best.answer())) return refusalOf(*refusal);
        Solved solved;
        solved.answer = best.takeAnswer();
        giveReasons(
            m_problem, best.plans(), best.held(), [&] { return reasonsOutOfTime(); }, solved.answer);
        solved.compromises =
            compromises(m_problem, best.plans(), best.held(), [&] { return reasonsOutOfTime(); });
        solved.answer.bound = std::min(m_bound.load(), solved.answer.cost.total());
        solved.rounds = rounds();
        solved.ending = proven()                  ? Ending::Proven
                        : m_stop.stop_requested() ? Ending::Stopped
                        : m_options.rounds        ? Ending::RoundsUp
                                                  : Ending::TimeUp;
        return solved;
    }

private:
    static constexpr int streamCount = 2;
    static constexpr double lastPart = 0.08; ///< of the time, for giving slots with care and for the reasons,
    static constexpr double longestLast = 2; ///< and at most so many seconds
    static constexpr double secondsToCool = 0.02; ///< a batch
    static constexpr double mostBesides = 0.4;    ///< of the time: search in the thread of the bound,
    static constexpr double longestBesides = 1;   ///< and at most so many seconds
    static constexpr double searchAlone = 0.75;   ///< of the time of one thread, before it turns to the bound
    static constexpr double timeToPlan = 0.02;    ///< of the time: then it is known how fast the search goes
    static constexpr int exchanges = 16;          ///< times at which streams by rounds look at each other
    static constexpr std::int64_t step = 16;      ///< rounds between two looks at the clock
    // A team: legs, in seconds or in rounds of each walk, and how much of the second thread is the bound's.
    static constexpr int mostLegs = 60;
    static constexpr std::int64_t roundsOfLeg = 500;
    static constexpr double shortestLeg = 0.1;
    static constexpr double longestLeg = 1;
    static constexpr double boundPart = 0.05;
    static constexpr double mostBoundPart = 0.15; ///< where that is less than `shortestBound`
    static constexpr double shortestBound = 3;    ///< seconds
    static constexpr double longestBound = 600;

    [[nodiscard]] double elapsed() const {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - m_begin).count();
    }
    [[nodiscard]] bool proven() const { return m_bound >= m_total; }
    [[nodiscard]] Stream* bestStream() {
        return &**std::min_element(m_streams.begin(), m_streams.end(), [](const auto& a, const auto& b) {
            return a && (!b || a->total() < b->total());
        });
    }
    [[nodiscard]] std::int64_t rounds() const {
        std::int64_t sum = m_team ? m_team->rounds() : 0;
        for (const auto& stream : m_streams) sum += stream ? stream->rounds() : 0;
        return sum;
    }
    [[nodiscard]] Cooling coolingOf(const Stream& stream, double rounds) const {
        Cooling cooling = stream.coolingFor(rounds);
        cooling.goesOn = m_options.goesOn;
        return cooling;
    }
    void begin(std::optional<Stream>& stream) {
        const auto index = static_cast<unsigned>(&stream - m_streams.data());
        stream.emplace(m_model, m_options.seed * streamCount + index);
    }

    [[nodiscard]] double searchEnd() const {
        return m_options.seconds - std::min(longestLast, m_options.seconds * lastPart);
    }
    [[nodiscard]] bool isOver(double end) const {
        return m_stop.stop_requested() || proven() || elapsed() >= end;
    }
    [[nodiscard]] bool reasonsOutOfTime() const {
        return m_stop.stop_requested() || (!m_options.rounds && elapsed() > m_options.seconds);
    }
    /// Stopped early, nothing is known of what cannot be.
    [[nodiscard]] Refusal refusalOf(const Refusal& impossible) const {
        if (!m_stop.stop_requested()) return impossible;
        return {impossible.place, "the search was stopped before all that is held and pinned was placed"};
    }

    void report() {
        if (m_options.progress) m_options.progress({elapsed(), m_total, m_bound, m_rounds});
    }

    void searchByRounds(std::int64_t rounds) {
        const search::Stopped stopped = [&] { return m_stop.stop_requested(); };
        m_bound = roundedUp(shareBound(m_problem, zoneKinds(m_problem), m_stop), costStep(m_problem));
        begin(m_streams[1]);
        onAll([&](Stream& stream) { stream.begin(stopped, stopped); });
        for (std::int64_t done = 0, part = 1; part <= exchanges; ++part) {
            const std::int64_t until = rounds * part / exchanges;
            onAll([&](Stream& stream) {
                Cooling cooling = coolingOf(stream, static_cast<double>(rounds));
                for (std::int64_t r = done; r < until && !stopped(); r += step) {
                    cooling.progress = static_cast<double>(r) / static_cast<double>(rounds);
                    stream.run(std::min(step, until - r), cooling, stopped);
                }
            });
            done = until;
            const Stream* best = bestStream();
            m_total = best->total();
            m_rounds = this->rounds();
            report();
            if (stopped() || proven()) break;
            for (auto& stream : m_streams)
                if (part % 4 == 0 && &*stream != best && stream->total() > best->total())
                    stream->adopt(*best);
        }
        onAll([&](Stream& stream) { stream.finish(stopped); });
        m_total = bestStream()->total();
    }

    /// Runs a piece of work on every stream, on as many threads as are allowed.
    template <class Work>
    void onAll(Work work) {
        if (m_options.threads < 2) {
            for (auto& stream : m_streams) work(*stream);
            return;
        }
        std::vector<std::jthread> threads;
        for (auto& stream : m_streams) threads.emplace_back([&] { work(*stream); });
    }

    void searchByTime() {
        if (m_options.threads < 2) {
            boundAtOnce(m_options.seconds / 10);
            searchUntil(*m_streams[0], searchEnd() * searchAlone);
            inTime(searchEnd() - elapsed(), m_stop,
                   [&](const std::stop_token& late) { improveBound(m_problem, *m_known, late); });
            return;
        }
        std::stop_source ended;
        const std::stop_callback passOn(m_stop, [&] { ended.request_stop(); });
        std::jthread second([&] {
            searchBesides(boundStart());
            improveBound(m_problem, *m_known, ended.get_token());
            searchBesides(searchEnd());
        });
        searchUntil(*m_streams[0], searchEnd());
        ended.request_stop();
    }

    /// The bound that is had soonest, or the part of it that is had within `seconds`.
    void boundAtOnce(double seconds) {
        inTime(seconds, m_stop, [&](const std::stop_token& late) {
            m_bound = roundedUp(shareBound(m_problem, zoneKinds(m_problem), late), costStep(m_problem));
        });
    }

    /// When the second stream leaves its thread to the bound: once it has cooled, where there is time for
    /// that.
    [[nodiscard]] double boundStart() const {
        const double cooled = secondsToCool * static_cast<double>(m_problem.batches.size());
        return cooled < std::min(longestBesides, mostBesides * m_options.seconds) ? cooled : 0;
    }

    void searchBesides(double end) {
        if (isOver(end)) return;
        if (!m_streams[1]) begin(m_streams[1]);
        searchUntil(*m_streams[1], end);
    }

    /// Until `end`, and a little longer to give slots with care.
    void searchUntil(Stream& stream, double end) {
        const search::Stopped stopped = [&] { return isOver(end); };
        if (stream.rounds() == 0) stream.begin(stopped, [this] { return m_stop.stop_requested(); });
        publish(stream, step);
        const double begun = elapsed();
        const std::int64_t before = stream.rounds();
        Cooling cooling;
        bool planned = false;
        while (!stopped()) {
            const double progress = (elapsed() - begun) / (end - begun);
            // Once it is known how fast it goes.
            if (!planned && progress > timeToPlan) {
                cooling = coolingOf(stream, static_cast<double>(stream.rounds() - before) / progress);
                planned = true;
            }
            cooling.progress = progress;
            stream.run(step, cooling, stopped);
            publish(stream, step);
        }
        stream.finish([&] { return isOver(end + (m_options.seconds - searchEnd()) / 3); });
        publish(stream, 0);
    }

    /// A team with its first plan; none where that leaves out what is pinned, which a walk of the whole house
    /// may find room for.
    void beginTeam() {
        m_team.emplace(m_model, m_options.seed);
        const bool isByTime = !m_options.rounds;
        m_team->begin([&] { return m_stop.stop_requested() || (isByTime && elapsed() >= searchEnd()); },
                      [this] { return m_stop.stop_requested(); });
        if (!m_stop.stop_requested() && m_team->leavesPinnedOut()) m_team.reset();
        if (m_team) publishTeam();
    }

    void searchTogether(std::int64_t rounds) {
        const search::Stopped stopped = [&] { return m_stop.stop_requested(); };
        m_bound = roundedUp(shareBound(m_problem, zoneKinds(m_problem), m_stop), costStep(m_problem));
        const auto total = static_cast<double>(rounds);
        const Cooling cooling = Cooling::forRounds(2 * total, m_problem.batches.size());
        const std::int64_t legs = std::clamp<std::int64_t>(rounds / roundsOfLeg, 1, mostLegs);
        for (std::int64_t leg = 0; leg < legs && !stopped() && !proven(); ++leg) {
            const std::int64_t done = rounds * leg / legs;
            const std::int64_t until = rounds * (leg + 1) / legs;
            const auto along = [&](std::int64_t r) { return static_cast<double>(done + r) / total; };
            m_team->walk({along, along(until - done), false, m_options.threads > 1}, cooling, stopped,
                         stopped);
            publishTeam();
        }
        m_team->finish(stopped);
        publishTeam();
    }

    void searchTogether() {
        const double end = searchEnd();
        const search::Stopped stopped = [&] { return isOver(end); };
        const double boundTime =
            std::min(longestBound, std::max(m_options.seconds * boundPart,
                                            std::min(shortestBound, m_options.seconds * mostBoundPart)));
        if (m_options.threads < 2) boundAtOnce(boundTime);
        const double begun = elapsed();
        const double boundEnd = begun + boundTime;
        std::jthread second = m_options.threads < 2 ? std::jthread() : improveBoundBeside(m_owned, m_known);
        const auto along = [&](std::int64_t) { return (elapsed() - begun) / (end - begun); };
        const double leg = std::clamp(m_options.seconds / mostLegs, shortestLeg, longestLeg) / (end - begun);
        // Seconds of all walks together.
        const auto walked = [&](double until) {
            return until - begun + (m_options.threads < 2 ? 0 : std::max(0.0, until - boundEnd));
        };
        Cooling cooling;
        bool planned = false;
        while (!stopped()) {
            const bool isAlone = m_options.threads < 2 || elapsed() < boundEnd;
            if (!isAlone && second.joinable()) endLater(std::exchange(second, {}));
            const double now = along(0);
            if (!planned && now > timeToPlan) {
                const double rounds = static_cast<double>(m_rounds) * walked(end) / walked(elapsed());
                cooling = Cooling::forRounds(rounds, m_problem.batches.size());
                planned = true;
            }
            m_team->walk({along, now + leg, isAlone, true}, cooling, stopped,
                         [this] { return m_stop.stop_requested(); });
            publishTeam();
        }
        if (second.joinable()) endLater(std::exchange(second, {}));
        m_team->finish([&] { return isOver(end + (m_options.seconds - searchEnd()) / 3); });
        publishTeam();
    }

    void publishTeam() {
        m_total = m_team->found().total();
        m_rounds = m_team->rounds();
        const std::lock_guard lock(m_reporting);
        report();
    }

    void publish(const Stream& stream, std::int64_t newRounds) {
        m_rounds += newRounds;
        if (stream.total() >= m_total && &stream != &*m_streams[0]) return;
        const std::lock_guard lock(m_reporting);
        m_total = std::min(m_total.load(), stream.total());
        report();
    }

    const std::chrono::steady_clock::time_point m_begin = std::chrono::steady_clock::now();
    std::shared_ptr<const Problem> m_owned; ///< the bound's thread may need it a little longer than the run
    const Problem& m_problem = *m_owned;
    const Options& m_options;
    std::stop_token m_stop;
    search::Model m_model;
    std::array<std::optional<Stream>, streamCount> m_streams; ///< the second once it is needed
    std::optional<Team> m_team;                               ///< of a large house, in place of streams
    std::mutex m_reporting;
    std::shared_ptr<Known> m_known = std::make_shared<Known>(); ///< as the problem
    std::atomic<std::int64_t>& m_total = m_known->total;
    std::atomic<std::int64_t>& m_bound = m_known->bound;
    std::atomic<std::int64_t> m_rounds = 0;
};

} // namespace

Outcome checkSize(const Problem& problem) {
    const int days = daysInReach(problem);
    if (days * static_cast<std::int64_t>(problem.zones.size()) <= mostZoneDays) return {};
    return Refusal{"", phrase("found %1 days on which something may stand and %2 zones, expected at most "
                              "20000000 days of zones",
                              days, problem.zones.size())};
}

Result<Solved> solve(const Problem& problem, const Options& options, std::stop_token stop) {
    if (const Outcome refusal = checkSize(problem)) return *refusal;
    auto within = std::make_shared<const Problem>(endedAfter(problem, daysInReach(problem)));
    return Run(std::move(within), options, std::move(stop)).solve();
}

} // namespace warmbench::planner
