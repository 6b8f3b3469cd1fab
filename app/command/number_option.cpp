#include "app/command/number_option.h"

#include "core/quantity/number.h"

namespace warmbench::app {
namespace {

CLI::ValidationError wrong(const std::string& name, const std::string& found, const std::string& kind,
                           const Accepted& accepted) {
    return CLI::ValidationError{name, "found '" + found + "', expected " + kind + accepted.words};
}

} // namespace

Accepted anyNumber() {
    return {[](double) { return true; }, ""};
}

Accepted atLeast(double least) {
    return {[least](double value) { return value >= least; }, " of at least " + numberText(least)};
}

Accepted above(double limit) {
    return {[limit](double value) { return value > limit; }, " above " + numberText(limit)};
}

Accepted between(double least, double most) {
    return {[least, most](double value) { return value >= least && value <= most; },
            " from " + numberText(least) + " to " + numberText(most)};
}

Accepted properShare() {
    return {[](double value) { return value > 0 && value < 1; }, " between 0 and 1"};
}

CLI::Option* addNumber(CLI::App& call, const std::string& name, double& into, const Accepted& accepted,
                       const std::string& help) {
    const auto read = [&into, accepted, name](const std::string& text) {
        const auto value = numberFromText(text);
        if (!value || !accepted.holds(*value)) throw wrong(name, text, "a number", accepted);
        into = *value;
    };
    return call.add_option_function<std::string>(name, read, help)->type_name("NUMBER");
}

CLI::Option* addWholeNumber(CLI::App& call, const std::string& name, std::int64_t& into,
                            const Accepted& accepted, const std::string& help) {
    const auto read = [&into, accepted, name](const std::string& text) {
        const auto value = wholeNumberFromText(text);
        if (!value || !accepted.holds(static_cast<double>(*value)))
            throw wrong(name, text, "a whole number", accepted);
        into = *value;
    };
    return call.add_option_function<std::string>(name, read, help)->type_name("WHOLE");
}

} // namespace warmbench::app
