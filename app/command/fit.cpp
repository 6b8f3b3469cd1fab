#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/figures.h"

#include "core/exchange/table/sightings.h"
#include "core/exchange/table/table_text.h"
#include "core/rooting/fit.h"
#include "core/rooting/turnbull.h"

#include <cmath>
#include <iostream>
#include <memory>
#include <optional>

namespace warmbench::app {
namespace {

using exchange::SightingGroup;
using nlohmann::ordered_json;
using rooting::RootingFit;

struct FitAsked {
    std::string file;
    std::string family = "loglogistic"; ///< or `turnbull`, which is no law
    bool allRoot = false;
    bool json = false;
};

ordered_json jsonOf(std::optional<double> value) {
    return value ? ordered_json(*value) : ordered_json();
}

ordered_json jsonOf(const std::string& group, const RootingFit& fit) {
    const auto of = [&fit](auto member) -> std::optional<double> {
        return fit.law ? std::optional{(*fit.law).*member} : std::nullopt;
    };
    const auto quantile = [&fit](double part) -> std::optional<double> {
        return fit.law ? std::optional{fit.law->timeOf(part)} : std::nullopt;
    };
    return {{"group", group},
            {"cuttings", static_cast<std::int64_t>(fit.cuttings)},
            {"p", jsonOf(of(&rooting::RootingLaw::share))},
            {"mu", jsonOf(of(&rooting::RootingLaw::mu))},
            {"sigma", jsonOf(of(&rooting::RootingLaw::sigma))},
            {"p_se", jsonOf(fit.shareError())},
            {"mu_se", jsonOf(fit.muError())},
            {"sigma_se", jsonOf(fit.sigmaError())},
            {"log_likelihood", fit.logLikelihood},
            {"t10", jsonOf(quantile(0.1))},
            {"t50", jsonOf(quantile(0.5))},
            {"t90", jsonOf(quantile(0.9))},
            {"status", statusName(fit.status)}};
}

void printText(const std::string& group, const RootingFit& fit) {
    std::cout << group << ": " << counted(static_cast<std::size_t>(fit.cuttings), "cutting", "cuttings")
              << ", ";
    if (!fit.law) {
        std::cout << "no unique answer (log-likelihood " << fixedText(fit.logLikelihood, 3) << ")\n";
        return;
    }
    std::cout << percentText(fit.law->share) << " root";
    if (const auto error = fit.shareError()) std::cout << " (standard error " << percentText(*error) << ')';
    std::cout << ", of them 10 % by " << fixedText(fit.law->timeOf(0.1), 1) << ", 50 % by "
              << fixedText(fit.law->timeOf(0.5), 1) << ", 90 % by " << fixedText(fit.law->timeOf(0.9), 1)
              << " (mu " << fixedText(fit.law->mu, 4) << ", sigma " << fixedText(fit.law->sigma, 4)
              << ", log-likelihood " << fixedText(fit.logLikelihood, 3) << ", " << statusName(fit.status)
              << ")\n";
}

ordered_json jsonOf(const SightingGroup& group, const rooting::TurnbullEstimate& estimate) {
    ordered_json intervals = ordered_json::array();
    for (const rooting::RootingMass& mass : estimate.masses)
        intervals.push_back(ordered_json::array(
            {mass.from, std::isfinite(mass.to) ? ordered_json(mass.to) : ordered_json(), mass.mass}));
    return {{"group", group.name}, {"intervals", std::move(intervals)}};
}

void printText(const std::string& group, const rooting::TurnbullEstimate& estimate) {
    std::cout << group << ":\n";
    for (const rooting::RootingMass& mass : estimate.masses) {
        std::cout << "  after " << fixedText(mass.from, 1);
        if (std::isfinite(mass.to))
            std::cout << " up to " << fixedText(mass.to, 1);
        else
            std::cout << " or never";
        std::cout << ": " << percentText(mass.mass) << '\n';
    }
}

int runFit(const FitAsked& asked) {
    auto text = exchange::readTableText(asked.file);
    if (!text) return refuse(text.refusal());
    const auto groups = exchange::readSightings(asked.file, std::move(*text), asked.allRoot);
    if (!groups) return refuse(groups.refusal());
    const auto family = rooting::familyFromName(asked.family);
    ordered_json answers = ordered_json::array();
    for (const SightingGroup& group : *groups) {
        if (family) {
            const RootingFit fit = fitRooting(*family, group.sightings, asked.allRoot);
            if (asked.json)
                answers.push_back(jsonOf(group.name, fit));
            else
                printText(group.name, fit);
        } else {
            const auto estimate = rooting::turnbull(group.sightings);
            if (asked.json)
                answers.push_back(jsonOf(group, estimate));
            else
                printText(group.name, estimate);
        }
    }
    if (asked.json) printJson({{"family", asked.family}, {"groups", std::move(answers)}});
    return done;
}

/// Whether a name is that of a law or of Turnbull's estimate; the words for a wrong one.
std::string checkFamily(const std::string& name) {
    if (rooting::familyFromName(name) || name == "turnbull") return {};
    return "found '" + name + "', expected loglogistic, lognormal, weibull or turnbull";
}

} // namespace

void addFit(CLI::App& program, Work& work) {
    CLI::App& call = *program.add_subcommand("fit", "The law by which cuttings root, from root checks.");
    const auto asked = std::make_shared<FitAsked>();
    call.add_option("checks", asked->file, "CSV file with the columns group, from, to, count and outcome")
        ->required();
    call.add_option("--family", asked->family, "loglogistic (unless given), lognormal, weibull or turnbull")
        ->check(CLI::Validator{[](std::string& name) { return checkFamily(name); }, "FAMILY"});
    call.add_flag("--all-root", asked->allRoot, "take it that all cuttings root in time");
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return runFit(*asked); }; });
}

} // namespace warmbench::app
