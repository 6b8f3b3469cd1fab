#pragma once

#include "core/book/change.h"
#include "core/forecast/batch_forecast.h"

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace warmbench::forecast {

/// What becomes of one struck batch that still stands.
struct BatchOutlook {
    BatchId batch;
    int struck = 0;
    int potted = 0;
    double alive = 0;                ///< standing, expected not to be dead
    double examined = 0;             ///< cuttings looked at in all checks
    BatchForecast::Share rooted;     ///< of those alive, on the day of the forecast
    double expected = 0;             ///< plants in the end
    rooting::Interval plants;        ///< their 90 % interval
    int surePlants = 0;              ///< the most that it gives with the asked sureness
    std::optional<Day> likelyReady;  ///< as likely as not, readyPart of those that root have by then
    std::optional<Day> sureReady;    ///< the same with the asked sureness
    std::optional<Day> assumedReady; ///< the end of its rooting stay, as it was planned
    bool rooting = true;             ///< as isRooting tells it: nobody has weaned it yet
    /// Days that it is likely to be ready after the plan's day; negative when before; 0 once it is weaned.
    [[nodiscard]] int slip() const {
        return rooting && likelyReady && assumedReady ? *likelyReady - *assumedReady : 0;
    }
};

/// What one target gets of its batches, planned ones with them.
struct TargetOutlook {
    TargetId target;
    int wanted = 0;
    double expected = 0;      ///< plants
    int surePlants = 0;       ///< that can be counted on with the asked sureness
    double sureness = 0;      ///< chance that all are met
    std::optional<Day> ready; ///< likely day on which its last batch is potted on, those struck only
};

/// Asks more of a slip than a day or two.
inline constexpr int slipThatMatters = 4;

/// The forecasts of all struck batches of a book that still stand, as seen on a day. Kept up to date change
/// by change: only what a change touches is computed again.
class BookForecast {
public:
    /// Sees the book with its nursery's own sureness, or another one.
    BookForecast(const HouseBook& book, Day day, MeasuredDay measured = {},
                 std::optional<double> sureness = {});

    /// Sees some batches only, such as those of one target: what others say of them is then the same.
    BookForecast(const HouseBook& book, Day day, const std::set<BatchId>& only,
                 std::optional<double> sureness = {});

    /// Takes over a change that the book has made.
    void update(const HouseBook& book, const Change& change);

    [[nodiscard]] Day day() const { return m_day; }
    [[nodiscard]] double sureness() const { return m_sureness; }
    /// By batch; those that have ended or whose recipe's figures can't be are not there.
    [[nodiscard]] const std::map<BatchId, BatchOutlook>& batches() const { return m_outlooks; }
    /// The forecast behind an outlook, for its curve; null where there is none.
    [[nodiscard]] const BatchForecast* find(BatchId batch) const;
    /// What a target can count on.
    [[nodiscard]] TargetOutlook target(const HouseBook& book, TargetId target) const;

private:
    /// A forecast with what is told of it.
    struct Seen {
        BatchForecast forecast;
        BatchOutlook outlook;
        std::vector<double> atLeast;
    };

    void compute(const HouseBook& book, BatchId batch);
    /// Of many batches, on two threads where nothing but the book is read.
    void compute(const HouseBook& book, const std::vector<BatchId>& batches);
    [[nodiscard]] std::optional<Seen> see(const HouseBook& book, BatchId batch) const;
    void keep(BatchId batch, Seen seen);

    Day m_day;
    double m_sureness;
    MeasuredDay m_measured;
    std::map<BatchId, BatchForecast> m_forecasts;
    std::map<BatchId, BatchOutlook> m_outlooks;
    std::map<BatchId, std::vector<double>> m_atLeast; ///< chance of at least 0, 1, 2, ... plants
};

} // namespace warmbench::forecast
