#include "app/command/parse_error.h"

#include <string>
#include <string_view>

namespace warmbench::app {
namespace {

/// The innermost call that the line names.
const CLI::App& chosenCall(const CLI::App& program) {
    const CLI::App* call = &program;
    while (!call->get_subcommands().empty()) call = call->get_subcommands().front();
    return *call;
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names) text.append(text.empty() ? "" : ", ").append(name);
    return text;
}

std::vector<std::string> callNames(const CLI::App& call) {
    std::vector<std::string> names;
    for (const CLI::App* inner : call.get_subcommands([](const CLI::App*) { return true; }))
        names.push_back(inner->get_name());
    return names;
}

std::vector<std::string> optionNames(const CLI::App& call) {
    std::vector<std::string> names;
    for (const CLI::Option* option : call.get_options()) names.push_back(option->get_name());
    return names;
}

/// What is not known to a call, or that it wants another call after it.
Refusal unknown(const CLI::App& call, const std::string& found) {
    const auto calls = callNames(call);
    const std::string expected =
        calls.empty() ? "only its own options: " + listed(optionNames(call)) : "one of " + listed(calls);
    return {call.get_parent() == nullptr ? "" : call.get_name(),
            (found.empty() ? "found nothing" : "found '" + found + "'") + ", expected " + expected};
}

} // namespace

Refusal refusalOf(const CLI::App& program, const CLI::ParseError& error) {
    const std::string text = error.what();
    const CLI::App& call = chosenCall(program);
    const auto before = [&text](std::string_view mark) { return text.substr(0, text.find(mark)); };
    const auto after = [&text](std::string_view mark) {
        const std::size_t place = text.find(mark);
        return place == std::string::npos ? std::string{} : text.substr(place + mark.size());
    };
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr) {
        const std::vector<std::string> unread = program.remaining(true);
        if (!callNames(call).empty()) return unknown(call, unread.empty() ? "" : unread.front());
        return {before(" is required"), "found nothing, expected it in every call of " + call.get_name()};
    }
    if (dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr)
        return unknown(call, program.remaining(true).front());
    if (dynamic_cast<const CLI::ExcludesError*>(&error) != nullptr)
        return {before(" excludes "),
                "found together with " + after(" excludes ") + ", expected only one of them"};
    if (dynamic_cast<const CLI::RequiresError*>(&error) != nullptr)
        return {after(" requires "), "found nothing, expected it beside " + before(" requires ")};
    if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr) {
        const bool missing = text.find("missing") != std::string::npos;
        return {before(":"),
                missing ? "found nothing, expected a value" : "found it twice, expected it once"};
    }
    return {"", text};
}

} // namespace warmbench::app
