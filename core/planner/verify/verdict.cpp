#include "core/planner/verify/verify.h"

#include "core/exchange/file/file.h"
#include "core/exchange/json/value.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/verify/answer_check.h"

namespace warmbench::planner {

std::string costText(WideCost thousandths) {
    const bool negative = thousandths < 0;
    if (negative) thousandths = -thousandths;
    std::string digits;
    do {
        digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(thousandths % 10)));
        thousandths /= 10;
    } while (thousandths > 0 || digits.size() < 4);
    std::string text = (negative ? "-" : "") + digits.substr(0, digits.size() - 3);
    const std::string decimals = digits.substr(digits.size() - 3);
    const std::size_t used = decimals.find_last_not_of('0') + 1;
    if (used > 0) text += "." + decimals.substr(0, used);
    return text;
}

std::string Verdict::summary() const {
    if (valid()) return "valid total=" + costText(cost.total()) + " bound=" + bound;
    return "invalid " + std::to_string(violations.size()) + " violations";
}

Verdict verifyAnswer(const Problem& problem, std::string_view answer) {
    if (answer.size() > largestFile)
        return {{"found more than 256 MiB, expected an answer of at most that"}, {}, {}};
    const auto document = json::parse(answer);
    if (!document) return {{document.refusal().what.text()}, {}, {}};
    return verify::AnswerCheck(problem).run(*document);
}

Verdict verifyAnswerFile(const Problem& problem, const std::filesystem::path& path) {
    const auto text = exchange::readFile(path, largestFile + 1);
    if (!text) return {{text.refusal().text()}, {}, {}};
    return verifyAnswer(problem, *text);
}

} // namespace warmbench::planner
