#include "core/take/own_figures.h"

#include "core/forecast/batch_forecast.h"
#include "core/rooting/batch_spread.h"
#include "core/rooting/beta_posterior.h"
#include "core/rooting/prior/recipe_prior.h"
#include "core/take/trial.h"

#include <algorithm>
#include <cmath>

namespace warmbench::take {
namespace {

constexpr std::size_t enoughBatches = 5;

double correlationOf(const std::vector<rooting::Take>& takes) {
    if (takes.size() < enoughBatches) return usualCorrelation;
    return std::max(usualCorrelation / 2, rooting::batchSpread(takes).correlation);
}

/// The mean of a recipe's mu after its batches.
double muAfter(const HouseBook& book, const std::vector<const Batch*>& batches, double recipeMu,
               double recipeDeviation) {
    const double priorWeight = 1 / (recipeDeviation * recipeDeviation);
    double weight = priorWeight;
    double sum = priorWeight * recipeMu;
    for (const Batch* batch : batches) {
        const auto forecast = forecast::BatchForecast::make(book, *batch, Day::last());
        const auto prior = forecast::priorOf(batch->recipe);
        if (!forecast || !prior) continue;
        const rooting::Moments mu = forecast->belief().mu();
        const double before = 1 / (prior->muDeviation * prior->muDeviation);
        const double told = 1 / (mu.deviation * mu.deviation) - before;
        if (!(told > 0)) continue;
        const double centre = (mu.mean / (mu.deviation * mu.deviation) - prior->mu * before) / told;
        const double each = 1 / (1 / told + usualMuSpread * usualMuSpread);
        weight += each;
        sum += each * centre;
    }
    return sum / weight;
}

int percentOf(double share) {
    return static_cast<int>(std::lround(100 * share));
}

} // namespace

std::optional<OwnFigures> ownFigures(const HouseBook& book, const Recipe& recipe) {
    const auto takePrior = rooting::takePrior(recipe);
    const auto need = rooting::rootingNeed(recipe);
    const auto prior = forecast::priorOf(recipe);
    if (!takePrior || !need || !prior) return std::nullopt;
    OwnFigures own;
    own.recipe = recipe.id;
    std::vector<const Batch*> batches;
    std::vector<rooting::Take> takes;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Ended || batch.taxon != recipe.taxon ||
            batch.recipe.wood != recipe.wood)
            continue;
        batches.push_back(&batch);
        own.batches.push_back(id);
        takes.push_back(takeOf(book, batch));
    }
    if (batches.empty()) return std::nullopt;
    own.take = takeOf(book, own.batches);
    own.correlation = correlationOf(takes);
    rooting::BetaShape share = takePrior->share;
    for (const rooting::Take& take : takes) {
        const double shrunk = 1 + static_cast<double>(take.struck - 1) * own.correlation;
        share.alpha += static_cast<double>(take.rooted) / shrunk;
        share.beta += static_cast<double>(take.struck - take.rooted) / shrunk;
        own.cuttingsThatCount += static_cast<double>(take.struck) / shrunk;
    }
    own.share = rooting::betaMean(share);
    // What the next batch may give: the belief in the mean, and the spread between batches round it.
    const double between = own.correlation * own.share * (1 - own.share);
    const double about = rooting::betaDeviation(share);
    const double variance = between + about * about;
    const double sum = std::max(1e-3, own.share * (1 - own.share) / variance - 1);
    const rooting::BetaShape next{own.share * sum, (1 - own.share) * sum};
    own.takePercent = {percentOf(rooting::betaQuantile(next, 0.1)),
                       percentOf(rooting::betaQuantile(next, 0.9))};
    const double mu = muAfter(book, batches, need->mu, prior->muDeviation);
    const double warmth = (recipe.rootZoneIdeal.value - recipe.base.value).units();
    const auto daysAt = [&](double place) {
        return std::max(1, static_cast<int>(std::lround(std::exp(mu + need->sigma * place) / warmth)));
    };
    const double tenth = std::log(9.0);
    own.daysToRoot = {daysAt(-tenth), daysAt(tenth)};
    return own;
}

Command adoptCommand(const HouseBook& book, const OwnFigures& own) {
    Recipe recipe = book.get<Recipe>(own.recipe);
    recipe.takePercent = {own.takePercent, ownFigure};
    recipe.daysToRoot = {own.daysToRoot, ownFigure};
    return Command{Put<Recipe>{std::move(recipe)}};
}

} // namespace warmbench::take
