#pragma once

#include "core/planner/bound/stay_choices.h"
#include "core/planner/bound/zone_kinds.h"
#include "core/planner/problem.h"

#include <algorithm>
#include <limits>
#include <stop_token>
#include <vector>

/// The planning problem as the bound sees it: an integer program in which each batch takes one chain of stay
/// choices or stays out, each zone and day takes one set-point and the batches that fit its slots, and
/// linking rows say that a batch stands only where the zone has it. Space is counted in slots, not arranged.
/// Every plan gives a solution that costs no more than the plan.
namespace warmbench::planner {

/// One batch in zones of one kind at one set-point: a price for each day on which it may stand there.
struct Lane {
    int batch = 0;
    int kind = 0;
    int setPoint = -1;
    int slots = 0; ///< as `ZoneShelf::slots` counts them
    int fromDay = 0;
    int toDay = 0;              ///< first day after; within the horizon
    std::size_t firstPrice = 0; ///< price of fromDay
};

/// A stay choice in the chain network of its batch.
struct Link {
    int lane = 0;
    std::size_t lowSum = 0; ///< running sums of prices whose difference is the price of the stay
    std::size_t highSum = 0;
    int strikeDay = -1;   ///< of a first stay, else -1
    int period = 0;       ///< of the batch's stock group, of a first stay
    int labourPrice = -1; ///< price of a strike on that day; -1 where hands are not scarce
    int entry = 0;        ///< node, counted over all batches
    int exit = 0;
    int keptExit = -1; ///< a second node, for a next stay that keeps the place; -1 where there is none such
    double cost = 0;   ///< units
    StayChoice choice;
};

struct BatchChains {
    std::vector<std::size_t> stays; ///< first link of each stay, and one after the last
    int firstNode = 0;              ///< the start of the batch's network; the node after it is the end
    int nodes = 0;
    int stockGroup = -1; ///< that it shares a scarce stock with; -1 where there is none
    double value = 0;    ///< units
    bool mayStayOut = true;
    double cuttings = 0;
    std::vector<int> strikeRows; ///< indices of the rows in which its cuttings count
};

/// At most `limit` cuttings of a stock are struck on the days of a row.
struct StrikeRow {
    int stock = 0;
    double limit = 0;
    int fromDay = 0;
    int toDay = 0; ///< first day after

    [[nodiscard]] bool counts(int day) const { return day >= fromDay && day < toDay; }
};

/// The batches of one scarce stock. A batch that is struck in a period counts to the limits of that period
/// and of all later ones.
struct StockGroup {
    int stock = 0;
    std::vector<int> batches;
    std::vector<int> ends;      ///< by period: first day after; one more period follows without a limit
    std::vector<double> limits; ///< by period: cuttings struck up to its end

    [[nodiscard]] int periodOf(int day) const {
        return static_cast<int>(std::upper_bound(ends.begin(), ends.end(), day) - ends.begin());
    }
};

/// A state in which a zone can hold what already stands in it.
struct HeldState {
    int setPoint = -1;
    std::vector<int> load; ///< slots by day, as long as something remains; within the horizon
};

struct HeldZone {
    int kind = 0;
    std::vector<HeldState> states;
};

/// The zones of one kind.
struct ZoneShelf {
    int count = 0; ///< of those in which nothing is held
    int slots = 0; ///< of each; scaled down, with those of the lanes, where there are very many
    int slotsScale = 1;
    std::vector<double> dayCost;         ///< units a day, by set-point + 1
    std::vector<std::vector<int>> lanes; ///< by set-point + 1
    std::vector<HeldZone> held;
    std::vector<int> days; ///< on which some lane or something held may stand, in order
};

/// A day on which more cuttings could be struck than hands suffice for.
struct LabourDay {
    struct Strike {
        std::size_t price = 0;
        int cuttings = 0;
    };
    int day = 0;
    std::int64_t measure = 1; ///< cuttings in which those below are counted, rounded down
    int cuttings = 0;         ///< that can be struck
    std::vector<Strike> strikes;
};

struct Formulation {
    /// Units in a thousandth of a currency unit. All amounts are whole numbers of units held in doubles,
    /// whose sums and differences are exact below 2^53.
    static constexpr double unitsPerThousandth = 64;

    int days = 0;
    std::vector<Lane> lanes;
    std::size_t prices = 0; ///< number of prices: of the lanes, then of the labour days
    std::vector<Link> links;
    std::vector<BatchChains> batches;
    int nodes = 0;
    std::vector<StrikeRow> strikeRows;
    std::vector<LabourDay> labour;
    std::vector<StockGroup> stockGroups; ///< of few batches; larger ones have strike rows
    std::vector<ZoneShelf> shelves;
};

/// Empty, of no shelves, once `stop` is requested or it would take about as many bytes as `memory`.
[[nodiscard]] Formulation formulate(const Problem& problem, const ZoneKinds& zones,
                                    const std::stop_token& stop,
                                    std::size_t memory = std::numeric_limits<std::size_t>::max());

} // namespace warmbench::planner
