#pragma once

#include "core/book/house_book.h"
#include "core/crop/library/library.h"
#include "core/crop/season.h"
#include "core/forecast/book_forecast.h"
#include "core/rooting/beta_binomial.h"

#include <optional>
#include <string>
#include <vector>

/// From targets to what must be struck: the work that comes before the planner.
namespace warmbench::season {

/// What is to be planned.
struct PlanRequest {
    Day from;                   ///< first day of striking
    int days = 28;              ///< days on which may be struck
    int surenessPermille = 900; ///< with which each target is to be met
    /// Batches that are planned for these days and not struck yet may be planned again, at this cost of each
    /// that stands elsewhere or at another time than before; those planned for days before these, and those
    /// that wait for a place, are planned again at no cost. Nothing: they stay as they are.
    std::optional<Money> changeCost{};
};

/// What a change has to be worth before a plan that people have begun to work by is turned over: a start,
/// common practice, no source.
inline constexpr Money usualChangeCost{500};

/// A batch that would be ready so many days after the date is still worth striking.
inline constexpr int mostDaysLate = 28;
/// Looked ahead for the next time at which a wood is right; a season comes once a year.
inline constexpr int daysOfAYear = 366;

/// How a target can be met: a recipe, the days on which its cuttings may be struck, and how many.
struct Way {
    Recipe recipe;
    StrikeWindow window;       ///< within the days asked for; for one that lies ahead, the same as `whole`
    StrikeWindow whole;        ///< all of it, from the first day asked for on, however far it reaches
    int daysToReady = 0;       ///< from the strike day to the last slot free, at the ideal root zone
    DegreeDays rooting{};      ///< until the sure share of those that root have rooted
    rooting::BetaShape take;   ///< belief in the share that roots
    std::int64_t cuttings = 0; ///< to strike, for the plants still wanted
    bool late = false;         ///< even on the first day it would be ready after the date
    [[nodiscard]] double meanTake() const { return take.alpha / (take.alpha + take.beta); }
};

/// A recipe as a way, with its window and number of cuttings still to be given. Nothing where its figures
/// can't be.
[[nodiscard]] std::optional<Way> wayBy(const Recipe& recipe);

enum class NeedState : std::uint8_t {
    Covered,  ///< what is planned, stands or is potted on suffices
    Now,      ///< can be struck in the days asked for
    Later,    ///< its season comes after the days asked for, in time
    TooLate,  ///< no season of any recipe meets the date any more
    NoRecipe, ///< nothing is known of how to strike it
};

/// What one target still needs.
struct TargetNeed {
    TargetId target;
    int expected = 0; ///< plants that can be counted on already, at the asked sureness
    int missing = 0;  ///< plants still to be raised
    NeedState state = NeedState::Covered;
    std::optional<Way> way; ///< present for Now
    /// How it can be met once its wood is right again: present for Later, and for TooLate, where it is `late`
    /// and the quickest there is. Nothing of it can be struck in the days asked for with the date met.
    std::optional<Way> ahead;
    Phrase why; ///< in words, for all states but Now
    /// The way that there is, now or ahead; null where there is none.
    [[nodiscard]] const Way* anyWay() const { return way ? &*way : ahead ? &*ahead : nullptr; }
};

/// Every target of the book with what it needs, in order of their dates. What its batches will give is
/// counted on as `forecast` sees them.
[[nodiscard]] std::vector<TargetNeed> targetNeeds(const HouseBook& book, const RecipeLibrary& library,
                                                  const PlanRequest& request,
                                                  const forecast::BookForecast& forecast);
/// The same of one target.
[[nodiscard]] TargetNeed targetNeed(const HouseBook& book, const RecipeLibrary& library,
                                    const PlanRequest& request, const forecast::BookForecast& forecast,
                                    TargetId target);
/// The same as seen on the first day of striking.
[[nodiscard]] std::vector<TargetNeed> targetNeeds(const HouseBook& book, const RecipeLibrary& library,
                                                  const PlanRequest& request);

/// The forecast that a request is planned with: as seen on its first day, at its sureness.
[[nodiscard]] forecast::BookForecast forecastFor(const HouseBook& book, const PlanRequest& request);
/// The same of those batches only that a plan asks about: batches of a target, and those that still stand
/// after its first day. A book of many years has many that neither is.
[[nodiscard]] forecast::BookForecast forecastForPlan(const HouseBook& book, const PlanRequest& request);

/// Recipes for a taxon: her own first; where she has none, those of the library.
[[nodiscard]] std::vector<Recipe> recipesFor(const HouseBook& book, const RecipeLibrary& library,
                                             const Taxon& taxon, std::optional<Wood> wood);

} // namespace warmbench::season
