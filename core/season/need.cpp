#include "core/season/need.h"

#include "core/book/query.h"
#include "core/rooting/prior/recipe_prior.h"
#include "core/rooting/strike_count.h"
#include "core/season/stock_yield.h"

#include <algorithm>
#include <cmath>

namespace warmbench::season {
namespace {

/// Slots are held until this share of the cuttings that will root has rooted.
constexpr double readyShare = 0.9;
/// A target is not put off to a later season that leaves fewer days than this to spare.
constexpr int daysToSpare = 14;

/// How one recipe could meet a date, before the number of cuttings is known.
struct Chance {
    Way way;
    std::optional<StrikeWindow> now;   ///< in the days asked for and in time
    StrikeWindow nowWhole;             ///< the same, beyond the days asked for
    std::optional<StrikeWindow> late;  ///< in the days asked for, though late
    std::optional<StrikeWindow> later; ///< the first one after the days asked for that is in time
    std::optional<StrikeWindow> next;  ///< the first one from the first day asked for on, in time or not
    bool given = true;   ///< its stock gives this wood in one of its flushes; true where the book has none
    bool covered = true; ///< a zone has a cover that suits; true where the book has no zone
};

/// Whether the wood of a recipe can be had at all, and has somewhere to root.
void look(Chance& chance, const HouseBook& book, TaxonId taxon) {
    const Recipe& recipe = chance.way.recipe;
    bool any = false;
    bool given = false;
    for (const auto& [id, stock] : book.all<Stock>()) {
        if (stock.taxon != taxon) continue;
        any = true;
        given = given || yields(stock, recipe.wood);
    }
    chance.given = given || !any;
    const auto& zones = book.all<Zone>();
    const std::vector<Cover>& covers = recipe.covers.value;
    chance.covered = zones.empty() || std::any_of(zones.begin(), zones.end(), [&](const auto& entry) {
                         return std::find(covers.begin(), covers.end(), entry.second.cover) != covers.end();
                     });
}

std::optional<Chance> chanceOf(const HouseBook& book, const Recipe& recipe, const PlanRequest& request,
                               Day due) {
    auto way = wayBy(recipe);
    if (!way) return std::nullopt;
    Chance chance{std::move(*way), {}, {}, {}, {}, {}};
    const Day latest = due - chance.way.daysToReady;
    const Day end = request.from + (request.days - 1);
    const Nursery& nursery = book.nursery();
    const Season local = seasonFor(recipe.season.value, nursery.latitude.units(), nursery.seasonShiftDays);
    const Day farthest = std::max({end, latest, request.from + daysOfAYear});
    for (const StrikeWindow& window : strikeWindows(local, request.from, farthest)) {
        if (!chance.next) chance.next = StrikeWindow{std::max(window.first, request.from), window.last};
        const StrikeWindow inPeriod{std::max(window.first, request.from), std::min(window.last, end)};
        if (inPeriod.first > inPeriod.last) {
            if (!chance.later && window.first <= latest)
                chance.later = StrikeWindow{window.first, std::min(window.last, latest)};
            continue;
        }
        if (inPeriod.first <= latest) {
            chance.now = StrikeWindow{inPeriod.first, std::min(inPeriod.last, latest)};
            chance.nowWhole = StrikeWindow{inPeriod.first, std::min(window.last, latest)};
        } else if (inPeriod.first - latest <= mostDaysLate) {
            chance.late = StrikeWindow{inPeriod.first, std::min(inPeriod.last, inPeriod.first + 6)};
        }
    }
    return chance;
}

Phrase woodWords(const Way& way) {
    return woodNames[static_cast<std::size_t>(way.recipe.wood)];
}

/// The chance to take up: a wood that her stock gives and a zone is there for, then her own recipe, then the
/// better take.
template <class Has>
const Chance* bestOf(const std::vector<Chance>& chances, Has has) {
    const Chance* best = nullptr;
    for (const Chance& chance : chances) {
        if (!has(chance)) continue;
        const auto rank = [](const Chance& one) {
            return std::make_tuple(one.given, one.covered, one.way.recipe.id.number != 0, one.way.meanTake(),
                                   -one.way.daysToReady);
        };
        if (!best || rank(chance) > rank(*best)) best = &chance;
    }
    return best;
}

/// A way with its days, and as many cuttings as the plants still wanted ask for.
Way wayIn(const Chance& chance, StrikeWindow window, StrikeWindow whole, int missing, double sureness) {
    Way way = chance.way;
    way.window = window;
    way.whole = whole;
    const auto count = rooting::strikeCount(missing, sureness, way.take);
    way.cuttings = count ? count->strike : missing;
    return way;
}

/// No season meets the date: what the next one would give all the same.
void decideTooLate(TargetNeed& need, const std::vector<Chance>& chances, Day from, Day due, double sureness) {
    need.state = NeedState::TooLate;
    const Chance& quickest =
        *std::min_element(chances.begin(), chances.end(), [](const Chance& a, const Chance& b) {
            return a.way.daysToReady < b.way.daysToReady;
        });
    const Day atLatest = due - quickest.way.daysToReady;
    const Chance* soonest = nullptr;
    const auto ready = [](const Chance& one) { return one.next->first + one.way.daysToReady; };
    for (const Chance& chance : chances)
        if (chance.next && (!soonest || ready(chance) < ready(*soonest))) soonest = &chance;
    if (!soonest) {
        need.why = phrase("no season meets the date: %1 cuttings take %2 days, so they had to be struck by "
                          "%3; give it a later date",
                          woodWords(quickest.way), quickest.way.daysToReady, atLatest);
        return;
    }
    need.why = phrase(
        atLatest < from ? pattern("no season meets the date: %1 cuttings take %2 days, so they had to be "
                                  "struck by %3; give it a later date, %4 at the earliest")
                        : pattern("no season meets the date: %1 cuttings take %2 days, so they would have to "
                                  "be struck by %3; give it a later date, %4 at the earliest"),
        woodWords(quickest.way), quickest.way.daysToReady, atLatest, ready(*soonest));
    need.ahead = wayIn(*soonest, *soonest->next, *soonest->next, need.missing, sureness);
    need.ahead->late = true;
}

void decide(TargetNeed& need, const std::vector<Chance>& chances, Day from, Day due, double sureness) {
    const Chance* now = bestOf(chances, [](const Chance& one) { return one.now.has_value(); });
    const Chance* later = bestOf(chances, [](const Chance& one) {
        return one.later && one.later->last - one.later->first >= daysToSpare;
    });
    const Chance* late = bestOf(chances, [](const Chance& one) { return one.late.has_value(); });
    // A few days only are better than none in time.
    if (!now && !later) later = bestOf(chances, [](const Chance& one) { return one.later.has_value(); });
    // What her stock never gives is not struck now either.
    const bool sooner = now && (now->given || (later && !later->given));
    if (later && (!sooner || later->later->first - now->now->last > 60)) {
        need.state = NeedState::Later;
        need.ahead = wayIn(*later, *later->later, *later->later, need.missing, sureness);
        need.why = phrase("%1 cuttings can be struck in time from %2 to %3", woodWords(later->way),
                          later->later->first, later->later->last);
        return;
    }
    if (!now && !late) return decideTooLate(need, chances, from, due, sureness);
    need.state = NeedState::Now;
    need.way = now ? wayIn(*now, *now->now, now->nowWhole, need.missing, sureness)
                   : wayIn(*late, *late->late, *late->late, need.missing, sureness);
    need.way->late = !now;
}

void noRecipe(TargetNeed& need, std::optional<Wood> wood) {
    need.state = NeedState::NoRecipe;
    if (wood)
        need.why = phrase("no recipe says how to strike %1 cuttings of it; leave the wood open, write a "
                          "recipe, or copy that of a relative",
                          Phrase(woodNames[static_cast<std::size_t>(*wood)]));
    else
        need.why = phrase("no recipe says how to strike it; write one, or copy that of a relative");
}

} // namespace

std::optional<Way> wayBy(const Recipe& recipe) {
    const auto need = rooting::rootingNeed(recipe);
    const auto prior = rooting::takePrior(recipe);
    if (!need || !prior) return std::nullopt;
    Way way;
    way.recipe = recipe;
    way.rooting = need->readyDegreeDays(readyShare);
    way.take = prior->share;
    const double warmth = (recipe.rootZoneIdeal.value - recipe.base.value).units();
    const int rootingDays = static_cast<int>(std::ceil(way.rooting.units() / warmth));
    way.daysToReady = rootingDays + recipe.weanDays.value + recipe.growOnDays.value;
    return way;
}

std::vector<Recipe> recipesFor(const HouseBook& book, const RecipeLibrary& library, const Taxon& taxon,
                               std::optional<Wood> wood) {
    std::vector<Recipe> found;
    for (const auto& [id, recipe] : book.all<Recipe>())
        if (recipe.taxon == taxon.id && (!wood || recipe.wood == *wood)) found.push_back(recipe);
    if (!found.empty()) return found;
    std::set<Wood> woods;
    for (const KnownTaxon* known : library.named(taxon.name)) woods.merge(library.woodsOf(*known));
    // Of a taxon that no row knows the wood's general recipe is used, where she says which wood.
    if (woods.empty() && wood) woods.insert(*wood);
    for (const Wood each : woods) {
        if (wood && each != *wood) continue;
        Recipe recipe = library.compose(taxon.name, each);
        recipe.taxon = taxon.id;
        found.push_back(std::move(recipe));
    }
    return found;
}

forecast::BookForecast forecastFor(const HouseBook& book, const PlanRequest& request) {
    return forecast::BookForecast(book, request.from, forecast::MeasuredDay{},
                                  request.surenessPermille / 1000.0);
}

forecast::BookForecast forecastForPlan(const HouseBook& book, const PlanRequest& request) {
    std::set<BatchId> asked;
    for (const auto& [id, batch] : book.all<Batch>()) {
        const auto& stays = book.staysOf(id);
        if (batch.target || std::any_of(stays.begin(), stays.end(),
                                        [&](StayId stay) { return book.get<Stay>(stay).to > request.from; }))
            asked.insert(id);
    }
    return forecast::BookForecast(book, request.from, asked, request.surenessPermille / 1000.0);
}

TargetNeed targetNeed(const HouseBook& book, const RecipeLibrary& library, const PlanRequest& request,
                      const forecast::BookForecast& forecast, TargetId id) {
    const Target& target = book.get<Target>(id);
    TargetNeed need;
    need.target = id;
    need.expected = forecast.target(book, id).surePlants;
    need.missing = std::max(0, target.plants - need.expected);
    if (need.missing == 0) {
        need.why = phrase("%1 of %2 can be counted on", need.expected, target.plants);
        return need;
    }
    std::vector<Chance> chances;
    for (const Recipe& recipe : recipesFor(book, library, book.get<Taxon>(target.taxon), target.wood))
        if (auto chance = chanceOf(book, recipe, request, target.due)) {
            look(*chance, book, target.taxon);
            chances.push_back(std::move(*chance));
        }
    if (chances.empty())
        noRecipe(need, target.wood);
    else
        decide(need, chances, request.from, target.due, request.surenessPermille / 1000.0);
    return need;
}

std::vector<TargetNeed> targetNeeds(const HouseBook& book, const RecipeLibrary& library,
                                    const PlanRequest& request) {
    return targetNeeds(book, library, request, forecastForPlan(book, request));
}

std::vector<TargetNeed> targetNeeds(const HouseBook& book, const RecipeLibrary& library,
                                    const PlanRequest& request, const forecast::BookForecast& forecast) {
    std::vector<TargetNeed> needs;
    for (const auto& [id, target] : book.all<Target>())
        needs.push_back(targetNeed(book, library, request, forecast, id));
    std::stable_sort(needs.begin(), needs.end(), [&](const TargetNeed& a, const TargetNeed& b) {
        return book.get<Target>(a.target).due < book.get<Target>(b.target).due;
    });
    return needs;
}

} // namespace warmbench::season
