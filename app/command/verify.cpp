#include "app/command/call.h"
#include "app/command/cost_json.h"
#include "app/command/figures.h"

#include "core/planner/format/problem_format.h"
#include "core/planner/verify/verify.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

using nlohmann::ordered_json;

struct VerifyAsked {
    std::string problem;
    std::string answer;
    bool json = false;
};

/// A sentence of the verdict on its own line, whatever names the answer holds.
std::string oneLine(std::string sentence) {
    for (char& c : sentence)
        if (static_cast<unsigned char>(c) < ' ') c = ' ';
    return sentence;
}

ordered_json jsonOf(const planner::Problem& problem, const planner::Verdict& verdict) {
    return {{"valid", verdict.valid()},
            {"cost", costJson(verdict.cost, problem.version)},
            {"bound", verdict.valid() ? ordered_json::parse(verdict.bound) : ordered_json()},
            {"violations", verdict.violations}};
}

int runVerify(const VerifyAsked& asked) {
    const auto problem = planner::readProblemFile(asked.problem);
    if (!problem) return refuseFile(problem.refusal());
    const planner::Verdict verdict = planner::verifyAnswerFile(*problem, asked.answer);
    if (asked.json) {
        printJson(jsonOf(*problem, verdict));
    } else {
        for (const std::string& violation : verdict.violations) std::cout << oneLine(violation) << '\n';
        std::cout << verdict.summary() << '\n';
    }
    return verdict.valid() ? done : answerIsNo;
}

} // namespace

void addVerify(CLI::App& program, Work& work) {
    CLI::App& call = *program.add_subcommand(
        "verify", "Check an answer against every rule of its problem, and reckon its cost anew.");
    const auto asked = std::make_shared<VerifyAsked>();
    call.add_option("problem", asked->problem, "the planning problem, as JSON")->required();
    call.add_option("answer", asked->answer, "the answer, as JSON")->required();
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return runVerify(*asked); }; });
}

} // namespace warmbench::app
