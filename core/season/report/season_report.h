#pragma once

#include "core/season/report/evidence.h"

#include <map>
#include <string>

namespace warmbench::season {

/// What a report is about: batches struck on from <= day < to, as known at the end of the day `seen`.
struct ReportSpan {
    Day from;
    Day to;
    Day seen;
};

/// What one target wanted and got.
struct TargetResult {
    TargetId target;
    int wanted = 0;
    int struck = 0;           ///< cuttings of all its batches, whenever they were struck
    int potted = 0;           ///< plants
    int inTime = 0;           ///< plants potted on up to the target's day
    int standing = 0;         ///< cuttings of its batches that still stand
    std::optional<Day> metOn; ///< when the last plant that was wanted was potted on

    [[nodiscard]] bool met() const { return metOn.has_value(); }
    [[nodiscard]] int missing() const { return wanted > potted ? wanted - potted : 0; }
};

/// What came of all batches of one taxon and wood. Slot-days, heat and take count those that have ended, so
/// that plants and what they cost are of the same batches.
struct GroupResult {
    TaxonId taxon;
    Wood wood = Wood::Softwood;
    int batches = 0;
    int struck = 0;
    int potted = 0;
    int standing = 0;
    std::map<std::string, int> lost; ///< cuttings by reason
    Evidence take;                   ///< of those that have ended
    double recipeLow = 0;            ///< their recipes' take as shares, weighted by cuttings
    double recipeHigh = 0;
    std::int64_t slotDays = 0;
    double kilowattHours = 0;

    /// Of one plant potted on; nothing while there is none.
    [[nodiscard]] std::optional<double> slotDaysEach() const;
    [[nodiscard]] std::optional<double> kilowattHoursEach() const;
};

/// Heat of the mats, reckoned as U A dT from set-points and the houses' air; nobody has read a meter.
struct HeatResult {
    double kilowattHours = 0; ///< of all mats on the report's days up to `seen`
    double idle = 0;          ///< of it, on days and mats over which nothing stood
    std::map<ZoneId, double> idleByZone;
};

/// What one stock gave of one wood.
struct StockResult {
    StockId stock;
    Wood wood = Wood::Softwood;
    int taken = 0;              ///< cuttings
    std::int64_t couldGive = 0; ///< when every flush of the report's days is picked to the full
    int potted = 0;
    Evidence take; ///< of its batches that have ended
};

/// A season looked back on.
struct SeasonReport {
    ReportSpan span;
    std::vector<TargetResult> targets; ///< due in the span or with a batch struck in it, by their days
    std::vector<GroupResult> groups;   ///< by the taxon's name, then wood
    HeatResult heat;
    std::vector<StockResult> stocks; ///< by the stock's name, then wood; those that gave or could give
    int struck = 0;
    int potted = 0;
    int lost = 0;
    int standing = 0;
    std::int64_t slotDays = 0; ///< of batches that have ended
    int pottedOfEnded = 0;
    double kilowattHoursOfEnded = 0;
};

[[nodiscard]] SeasonReport seasonReport(const HouseBook& book, const ReportSpan& span);

/// Slots times days that a batch has stood up to the end of a day.
[[nodiscard]] std::int64_t slotDaysOf(const HouseBook& book, BatchId batch, Day seen);

/// Heat by batch: a mat's energy of a day is shared by the slots that batches take in its zone; what nobody
/// shares is idle. Of the batches all days up to `seen` count, of idle mats those of the span.
struct HeatShares {
    std::map<BatchId, double> byBatch; ///< kWh
    HeatResult all;
};
[[nodiscard]] HeatShares heatShares(const HouseBook& book, const ReportSpan& span);

} // namespace warmbench::season
