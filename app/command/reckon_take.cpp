#include "app/command/reckon.h"

#include "app/command/book_words.h"
#include "app/command/figures.h"
#include "app/command/number_option.h"
#include "core/rooting/proportion.h"
#include "core/rooting/strike_count.h"

#include <memory>

namespace warmbench::app {
namespace {

using rooting::Interval;
using rooting::Take;

constexpr double mostCuttings = 1e15;

struct TakeAsked {
    Take take;
    Take second;
    double level = 0.95;
    bool json = false;
};

void addTakeOptions(CLI::App& call, Take& take, const std::string& ending) {
    addWholeNumber(call, "--rooted" + ending, take.rooted, between(0, mostCuttings), "cuttings that rooted")
        ->required();
    addWholeNumber(call, "--struck" + ending, take.struck, between(1, mostCuttings),
                   "cuttings that were struck")
        ->required();
}

void addLevel(CLI::App& call, double& level) {
    addNumber(call, "--level", level, properShare(), "sureness of the intervals, 0.95 unless given");
}

/// The refusal of more rooted than struck.
Outcome tooManyRooted(const Take& take, const std::string& ending) {
    if (take.rooted <= take.struck) return {};
    return Refusal{"--rooted" + ending, "found " + std::to_string(take.rooted) + ", expected at most the " +
                                            std::to_string(take.struck) + " of --struck" + ending};
}

nlohmann::ordered_json json(const Interval& interval) {
    return nlohmann::ordered_json::array({interval.low, interval.high});
}

std::string text(const Interval& interval) {
    return percentText(interval.low) + " to " + percentText(interval.high);
}

int reckonTake(const TakeAsked& asked) {
    if (const auto refused = tooManyRooted(asked.take, "")) return refuse(*refused);
    const Interval wilson = wilsonInterval(asked.take, asked.level);
    const Interval exact = exactInterval(asked.take, asked.level);
    Figures figures;
    figures.add("take", asked.take.share(), "take", percentText(asked.take.share()));
    figures.add("wilson", json(wilson), "Wilson interval", text(wilson));
    figures.add("exact", json(exact), "exact interval", text(exact));
    figures.print(asked.json);
    return done;
}

int reckonDifference(const TakeAsked& asked) {
    if (const auto refused = tooManyRooted(asked.take, "")) return refuse(*refused);
    if (const auto refused = tooManyRooted(asked.second, "2")) return refuse(*refused);
    const double difference = asked.take.share() - asked.second.share();
    const Interval newcombe = differenceInterval(asked.take, asked.second, asked.level);
    Figures figures;
    figures.add("difference", difference, "difference", percentText(difference));
    figures.add("newcombe", json(newcombe), "Newcombe interval", text(newcombe));
    figures.print(asked.json);
    return done;
}

struct StrikeCountAsked {
    std::int64_t want = 0;
    double sure = 0;
    rooting::BetaShape share;
    bool json = false;
};

int reckonStrikeCount(const StrikeCountAsked& asked) {
    const auto found = strikeCount(asked.want, asked.sure, asked.share);
    if (!found)
        return refuse({"--sure", "found a sureness that not even " + std::to_string(rooting::mostStruck) +
                                     " cuttings give, expected one that fewer give"});
    Figures figures;
    figures.add("strike", found->strike, "strike",
                counted(static_cast<std::size_t>(found->strike), "cutting", "cuttings"));
    figures.add("sureness", found->sureness, "sureness", percentText(found->sureness));
    figures.add("expected", found->expected, "expected to root", fixedText(found->expected, 1) + " cuttings");
    figures.print(asked.json);
    return done;
}

} // namespace

void addOneTake(CLI::App& reckon, Work& work) {
    CLI::App& call = *reckon.add_subcommand("take", "The share that rooted, with its intervals.");
    const auto asked = std::make_shared<TakeAsked>();
    addTakeOptions(call, asked->take, "");
    addLevel(call, asked->level);
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return reckonTake(*asked); }; });
}

void addDifference(CLI::App& reckon, Work& work) {
    CLI::App& call =
        *reckon.add_subcommand("difference", "One share that rooted less another, with its interval.");
    const auto asked = std::make_shared<TakeAsked>();
    addTakeOptions(call, asked->take, "");
    addTakeOptions(call, asked->second, "2");
    addLevel(call, asked->level);
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return reckonDifference(*asked); }; });
}

void addStrikeCount(CLI::App& reckon, Work& work) {
    constexpr double mostWanted = 1e7;
    constexpr double heaviest = 1e12;
    constexpr double lightest = 1e-6;
    CLI::App& call = *reckon.add_subcommand("strike-count",
                                            "How many to strike, when the share that roots has a beta law.");
    const auto asked = std::make_shared<StrikeCountAsked>();
    addWholeNumber(call, "--want", asked->want, between(0, mostWanted), "rooted cuttings wanted")->required();
    addNumber(call, "--sure", asked->sure, properShare(), "probability with which they are")->required();
    addNumber(call, "--alpha", asked->share.alpha, between(lightest, heaviest), "first shape of the beta law")
        ->required();
    addNumber(call, "--beta", asked->share.beta, between(lightest, heaviest), "second shape of the beta law")
        ->required();
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return reckonStrikeCount(*asked); }; });
}

} // namespace warmbench::app
