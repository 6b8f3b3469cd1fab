#pragma once

#include <nlohmann/json.hpp>

#include <string>
#include <utility>
#include <vector>

namespace warmbench::app {

/// The figures of one answer: as one JSON object with full precision, or a line each for a person.
class Figures {
public:
    /// `value` goes to JSON under `key`; a person reads `label` and `text`.
    void add(const std::string& key, nlohmann::ordered_json value, std::string label, std::string text);
    /// Writes all of them to standard output.
    void print(bool json) const;

private:
    nlohmann::ordered_json m_json = nlohmann::ordered_json::object();
    std::vector<std::pair<std::string, std::string>> m_lines;
};

/// Writes JSON on one line to standard output; what is not finite becomes null.
void printJson(const nlohmann::ordered_json& json);

/// A number with so many decimals.
std::string fixedText(double value, int decimals);
/// A share as per cent with one decimal.
std::string percentText(double share);

} // namespace warmbench::app
