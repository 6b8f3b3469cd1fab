#include "core/crop/library/library.h"
#include "core/crop/library/sheet.h"
#include "core/crop/library/taxon_name.h"
#include "core/crop/safety.h"

#include <algorithm>
#include <cmath>

namespace warmbench {
namespace {

constexpr char originSeparator = '/';
constexpr const char* noneCameToMind = "none came to mind, which is no promise that the plant is safe";

using Layers = std::vector<const RecipeRow*>;

/// The rows that give a figure, in the order of the layers.
template <class T>
Layers giversOf(const Layers& layers, Figure<T> Recipe::*figure) {
    Layers givers;
    for (const RecipeRow* row : layers)
        if (!(row->figures.*figure).source.empty()) givers.push_back(row);
    return givers;
}

/// The first figure given of each kind.
Recipe firstGiven(const Layers& layers) {
    Recipe recipe;
    const auto take = [](FigureKind, auto& own, const auto& given) {
        if (own.source.empty()) own = given;
    };
    for (const RecipeRow* row : layers) visitFigures(take, recipe, row->figures);
    return recipe;
}

bool isPublished(const Layers& layers, Figure<Celsius> Recipe::*figure) {
    const Layers givers = giversOf(layers, figure);
    return !givers.empty() && givers.front()->kind == RowKind::Published;
}

template <class T>
std::string named(const Figure<T>& figure) {
    return valueText(figure.value) + " (" + figure.source + ")";
}

/// Makes low <= ideal <= high: an ideal that is not published yields to published limits, all other limits
/// yield to the ideal.
void orderRootZone(Recipe& recipe, const Layers& layers) {
    Figure<Celsius>& ideal = recipe.rootZoneIdeal;
    const Figure<Celsius> given = ideal;
    if (!isPublished(layers, &Recipe::rootZoneIdeal)) {
        if (isPublished(layers, &Recipe::rootZoneHigh) && ideal.value > recipe.rootZoneHigh.value)
            ideal = {recipe.rootZoneHigh.value,
                     "derived: " + named(given) + " lowered to the highest of " + recipe.rootZoneHigh.source};
        if (isPublished(layers, &Recipe::rootZoneLow) && ideal.value < recipe.rootZoneLow.value)
            ideal = {recipe.rootZoneLow.value,
                     "derived: " + named(given) + " raised to the lowest of " + recipe.rootZoneLow.source};
    }
    if (recipe.rootZoneLow.value > ideal.value)
        recipe.rootZoneLow = {ideal.value, "derived: " + named(recipe.rootZoneLow) +
                                               " lowered to the root zone of " + given.source};
    if (recipe.rootZoneHigh.value < ideal.value)
        recipe.rootZoneHigh = {ideal.value, "derived: " + named(recipe.rootZoneHigh) +
                                                " raised to the root zone of " + given.source};
}

void keepBaseBelowRootZone(Recipe& recipe, const Layers& layers) {
    const Figure<Celsius> given = recipe.base;
    if (given.value < recipe.rootZoneIdeal.value) return;
    for (const RecipeRow* row : giversOf(layers, &Recipe::base)) {
        const Figure<Celsius>& next = row->figures.base;
        if (next.value >= recipe.rootZoneIdeal.value) continue;
        recipe.base = {next.value,
                       "derived: " + next.source + ", since " + named(given) + " is not below the root zone"};
        return;
    }
}

/// The thermal time of a row's days is days x (its own ideal - base); at the recipe's ideal it takes
/// days x (own ideal - base) / (recipe's ideal - base).
void carryDaysToRootZone(Recipe& recipe, const Layers& layers) {
    const Figure<Celsius>& own = giversOf(layers, &Recipe::daysToRoot).front()->figures.rootZoneIdeal;
    const Celsius ideal = recipe.rootZoneIdeal.value;
    const Celsius base = recipe.base.value;
    if (own.source.empty() || own.value == ideal || own.value <= base || ideal <= base) return;
    const double stretch = (own.value - base).units() / (ideal - base).units();
    const auto carried = [stretch](int days) {
        return std::max(1, static_cast<int>(std::lround(days * stretch)));
    };
    const Figure<IntRange> given = recipe.daysToRoot;
    recipe.daysToRoot = {{carried(given.value.low), carried(given.value.high)},
                         "derived: " + valueText(given.value) + " days at " + valueText(own.value) + " (" +
                             given.source + ") carried to " + valueText(ideal) + " over a base of " +
                             valueText(base)};
}

void spreadSingleTake(Recipe& recipe, const Layers& layers) {
    const Figure<IntRange> given = recipe.takePercent;
    if (given.value.low != given.value.high) return;
    for (const RecipeRow* row : giversOf(layers, &Recipe::takePercent)) {
        const Figure<IntRange>& other = row->figures.takePercent;
        const int halfSpread = (other.value.high - other.value.low + 1) / 2;
        if (halfSpread == 0 || row->kind == RowKind::Published) continue;
        recipe.takePercent = {
            {std::max(0, given.value.low - halfSpread), std::min(100, given.value.high + halfSpread)},
            "derived: " + valueText(given.value) + " % (" + given.source + ") with the spread of " +
                valueText(other.value) + " % (" + other.source + ")"};
        return;
    }
}

/// A hormone and the form that it is used in belong together: a published one that names no form takes that
/// of the rows from memory only if they have one.
void matchHormoneForm(Recipe& recipe, const Layers& layers) {
    const RecipeRow& giver = *giversOf(layers, &Recipe::hormone).front();
    if (!giver.figures.hormoneForm.source.empty())
        recipe.hormoneForm = giver.figures.hormoneForm;
    else if (isWithoutHormone(recipe.hormoneForm.value))
        recipe.hormoneForm = {"not stated", recipe.hormone.source};
}

/// The cover of a publication comes first; those of the next row that names others may stand in for it.
void addStandInCovers(Recipe& recipe, const Layers& layers) {
    const Layers givers = giversOf(layers, &Recipe::covers);
    if (givers.front()->kind != RowKind::Published) return;
    const auto other = std::find_if(givers.begin(), givers.end(),
                                    [](const RecipeRow* row) { return row->kind != RowKind::Published; });
    if (other == givers.end()) return;
    const Figure<std::vector<Cover>> given = recipe.covers;
    std::vector<Cover>& covers = recipe.covers.value;
    for (const Cover cover : (*other)->figures.covers.value)
        if (std::find(covers.begin(), covers.end(), cover) == covers.end()) covers.push_back(cover);
    if (covers != given.value)
        recipe.covers.source = "derived: " + named(given) + " first, the others " + (*other)->source;
}

} // namespace

Layers RecipeLibrary::layersOf(std::string_view taxonName, Wood wood) const {
    const KnownTaxon* taxon = taxonOf(taxonName);
    const std::string_view name = taxon ? std::string_view{taxon->name} : taxonName;
    const KnownTaxon* species = taxonWithKey(speciesKey(name));
    const KnownTaxon* genus = taxonWithKey(genusKey(name) + " spp.");
    if (species == taxon) species = nullptr;
    if (genus == taxon) genus = nullptr;

    Layers layers;
    const auto add = [&layers](const Layers& more) { layers.insert(layers.end(), more.begin(), more.end()); };
    add(rowsOf(taxon, RowKind::Published, wood));
    add(rowsOf(species, RowKind::Published, wood));
    add(rowsOf(taxon, RowKind::Memory, wood));
    add(rowsOf(species, RowKind::Memory, wood));
    add(rowsOf(genus, RowKind::Published, wood));
    for (const RowKind general : {RowKind::CommonPractice, RowKind::Default})
        for (const RecipeRow& row : m_rows)
            if (row.kind == general && row.wood == wood) layers.push_back(&row);
    return layers;
}

Figure<std::string> RecipeLibrary::cautionFor(std::string_view taxonName, Wood wood) const {
    const KnownTaxon* taxon = taxonOf(taxonName);
    const KnownTaxon* species = taxonWithKey(speciesKey(taxon ? std::string_view{taxon->name} : taxonName));
    if (species == taxon) species = nullptr;
    std::vector<Figure<std::string>> cautions;
    bool thoughtOf = false;
    for (const KnownTaxon* of : {taxon, species})
        for (const RowKind kind : {RowKind::Published, RowKind::Memory})
            for (const RecipeRow* row : rowsOf(of, kind, std::nullopt)) {
                const Figure<std::string>& given = row->figures.caution;
                thoughtOf = thoughtOf || given.value == "none";
                if (given.source.empty() || given.value == "none") continue;
                const auto says = [&given](const Figure<std::string>& known) {
                    return known.value.find(given.value) != std::string::npos;
                };
                if (std::none_of(cautions.begin(), cautions.end(), says)) cautions.push_back(given);
            }
    if (cautions.empty())
        return thoughtOf ? Figure<std::string>{noneCameToMind, fromMemory}
                         : giversOf(layersOf(taxonName, wood), &Recipe::caution).back()->figures.caution;

    Figure<std::string> all = cautions.front();
    bool oneSource = true;
    for (std::size_t i = 1; i < cautions.size(); ++i) {
        all.value += "; " + cautions[i].value;
        if (all.source.find(cautions[i].source) != std::string::npos) continue;
        all.source += "; " + cautions[i].source;
        oneSource = false;
    }
    if (!oneSource) all.source = "derived: the cautions of " + all.source + " together";
    return all;
}

Recipe RecipeLibrary::compose(std::string_view taxonName, Wood wood) const {
    const Layers layers = layersOf(taxonName, wood);
    Recipe recipe = firstGiven(layers);
    recipe.wood = wood;
    const KnownTaxon* taxon = taxonOf(taxonName);
    recipe.origin = nameKey(taxon ? std::string_view{taxon->name} : taxonName) + originSeparator +
                    woodNames[static_cast<std::size_t>(wood)];
    orderRootZone(recipe, layers);
    keepBaseBelowRootZone(recipe, layers);
    carryDaysToRootZone(recipe, layers);
    spreadSingleTake(recipe, layers);
    matchHormoneForm(recipe, layers);
    addStandInCovers(recipe, layers);
    recipe.caution = cautionFor(taxonName, wood);
    return recipe;
}

std::optional<Recipe> RecipeLibrary::composeOrigin(std::string_view origin) const {
    const std::size_t separator = origin.rfind(originSeparator);
    if (separator == std::string_view::npos) return std::nullopt;
    const auto wood = woodNamed(origin.substr(separator + 1));
    if (!wood) return std::nullopt;
    return compose(origin.substr(0, separator), *wood);
}

} // namespace warmbench
