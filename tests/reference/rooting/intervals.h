#pragma once

#include "core/rooting/fit.h"
#include "core/rooting/sighting.h"

#include "tests/support/check_table.h"
#include "tests/support/within.h"

#include <cmath>

namespace warmbench::tests {

/// A row `left,right,count` of the checks as a sighting; `(Inf, Inf]` is a cutting that never roots.
inline rooting::Sighting sightingOf(const CheckRow& row) {
    const double left = row.number("left");
    const double right = row.number("right");
    const double count = row.number("count");
    if (std::isinf(left)) return {rooting::Outcome::Never, 0, 0, count};
    if (std::isinf(right)) return {rooting::Outcome::Unrooted, left, 0, count};
    return {rooting::Outcome::Rooted, left, right, count};
}

inline std::vector<rooting::Sighting> sightingsOf(const std::vector<CheckRow>& rows) {
    std::vector<rooting::Sighting> sightings;
    sightings.reserve(rows.size());
    for (const CheckRow& row : rows) sightings.push_back(sightingOf(row));
    return sightings;
}

/// The family that a row's column `dist` names.
inline rooting::Family familyOf(const CheckRow& row) {
    return rooting::familyFromName(row.text("dist")).value();
}

/// The status that a check's column `boundary` calls for.
inline rooting::FitStatus statusOf(const CheckRow& row) {
    switch (static_cast<int>(row.number("boundary"))) {
    case 0:
        return rooting::FitStatus::Inside;
    case 1:
        return rooting::FitStatus::AllRoot;
    default:
        return rooting::FitStatus::NoUniqueAnswer;
    }
}

/// Compares a fit with a row of the checks: log-likelihood within 1e-5, parameters to 1e-4 of themselves,
/// standard errors to 5e-3 of themselves, where the row has them; parameters of a fit that is hardly better
/// than the one where all root are not compared.
inline void checkFit(const rooting::RootingFit& fit, const CheckRow& row, bool compareParameters = true) {
    CHECK(rooting::statusName(fit.status) == rooting::statusName(statusOf(row)));
    CHECK(fit.logLikelihood == within(row.number("logLik"), 1e-5));
    if (row.absent("mu") || !compareParameters) return;
    REQUIRE(fit.law);
    CHECK(fit.law->share == withinPart(row.number("pi"), 1e-4));
    CHECK(fit.law->mu == withinPart(row.number("mu"), 1e-4));
    CHECK(fit.law->sigma == withinPart(row.number("sigma"), 1e-4));
    if (!row.has("se_mu")) return;
    CHECK(fit.shareError().has_value() == !row.absent("se_pi"));
    if (const auto error = fit.shareError()) CHECK(*error == withinPart(row.number("se_pi"), 5e-3));
    CHECK(fit.muError().value() == withinPart(row.number("se_mu"), 5e-3));
    CHECK(fit.sigmaError().value() == withinPart(row.number("se_sigma"), 5e-3));
}

} // namespace warmbench::tests
