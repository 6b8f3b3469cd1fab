#include "core/rooting/look.h"

#include "core/rooting/ln_gamma.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

namespace warmbench::rooting {
namespace {

/// ln of the binomial coefficient of real numbers, -infinity outside 0 <= chosen <= of.
double logChoose(double of, double chosen) {
    constexpr double slack = 1e-9;
    if (chosen < -slack || chosen > of + slack) return -std::numeric_limits<double>::infinity();
    return lnGamma(of + 1) - lnGamma(std::max(0.0, chosen) + 1) - lnGamma(std::max(0.0, of - chosen) + 1);
}

/// The polynomial of a look of which about `known` of `standing` were seen rooted before.
void addPolynomial(LookTerm& term, const Look& look, double known) {
    // Whole numbers, and no more than there is room for: what was misjudged before is not held against the
    // rooting law.
    const double knownRooted = std::round(std::min(known, look.standing));
    const double most = std::min({knownRooted, look.rooted, look.examined});
    const double least = std::max(0.0, look.examined - (look.standing - knownRooted));
    std::vector<double> logs;
    double greatest = -std::numeric_limits<double>::infinity();
    for (double a = most; a >= std::min(least, most); --a) {
        logs.push_back(logChoose(knownRooted, a) + logChoose(look.standing - knownRooted, look.examined - a) +
                       logChoose(look.examined - a, look.rooted - a));
        greatest = std::max(greatest, logs.back());
    }
    term.leastRooted = look.rooted - most;
    if (!std::isfinite(greatest)) {
        term.polynomial = {1};
        return;
    }
    constexpr double negligible = 1e-30;
    for (const double log : logs) term.polynomial.push_back(std::exp(log - greatest));
    while (term.polynomial.back() < negligible) term.polynomial.pop_back();
}

} // namespace

Look lookOf(double time, double standing, double examined, double dead, double rooted) {
    const double alive = examined - dead;
    return {time, alive, rooted, std::max(alive, standing * alive / examined)};
}

std::vector<CuttingsLeft> pooled(const std::vector<CuttingsLeft>& lots) {
    constexpr double nearlyAll = 0.95;
    std::map<std::vector<std::pair<double, bool>>, CuttingsLeft> byDays;
    for (const CuttingsLeft& lot : lots) {
        std::vector<std::pair<double, bool>> days;
        for (const Look& look : lot.looks)
            days.emplace_back(look.time, look.examined >= nearlyAll * look.standing);
        CuttingsLeft& sum = byDays[days];
        sum.alive += lot.alive;
        sum.looks.resize(lot.looks.size());
        for (std::size_t i = 0; i < lot.looks.size(); ++i) {
            sum.looks[i].time = lot.looks[i].time;
            sum.looks[i].examined += lot.looks[i].examined;
            sum.looks[i].rooted += lot.looks[i].rooted;
            sum.looks[i].standing += lot.looks[i].standing;
        }
    }
    std::vector<CuttingsLeft> found;
    found.reserve(byDays.size());
    for (auto& [days, lot] : byDays) found.push_back(std::move(lot));
    return found;
}

double LookTerm::logLikelihood(double chance) const {
    double sum = 0;
    for (auto factor = polynomial.rbegin(); factor != polynomial.rend(); ++factor)
        sum = sum * chance + *factor;
    double log = std::log(sum);
    if (leastRooted > 0) log += leastRooted * std::log(chance);
    if (unrooted > 0) log += unrooted * std::log1p(-chance);
    return log;
}

namespace {

/// Calls visit(i, part) for each look before `look`: the part of the cuttings that was last seen then.
/// Returns the part never seen.
template <class Visit>
double overLastSeen(const LookSeries& series, std::size_t look, Visit visit) {
    double notSince = 1;
    for (std::size_t i = look; i-- > 0;) {
        const Look& before = series[i];
        if (!(before.examined > 0)) continue;
        const double picked = std::min(1.0, before.examined / before.standing);
        visit(i, notSince * picked);
        notSince *= 1 - picked;
    }
    return notSince;
}

} // namespace

double knownRooted(const LookSeries& series, std::size_t look) {
    double known = 0;
    overLastSeen(series, look, [&](std::size_t i, double lastSeen) {
        known += lastSeen * series[i].standing * series[i].rooted / series[i].examined;
    });
    return std::min(known, series[look].standing);
}

std::vector<LookTerm> lookTerms(const LookSeries& series) {
    std::vector<LookTerm> terms;
    for (std::size_t j = 0; j < series.size(); ++j) {
        const Look& look = series[j];
        LookTerm term;
        term.fresh = overLastSeen(series, j, [&](std::size_t i, double lastSeen) {
            const double unrooted = lastSeen * (1 - series[i].rooted / series[i].examined);
            if (unrooted > 0) term.seen.push_back({i, unrooted});
        });
        double others = term.fresh;
        for (const LookTerm::Source& source : term.seen) others += source.weight;
        if (others > 0) {
            term.fresh /= others;
            for (LookTerm::Source& source : term.seen) source.weight /= others;
        } else {
            term.fresh = 1; // all were seen rooted: nothing is left to root
        }
        term.unrooted = look.examined - look.rooted;
        addPolynomial(term, look, knownRooted(series, j));
        terms.push_back(std::move(term));
    }
    return terms;
}

} // namespace warmbench::rooting
