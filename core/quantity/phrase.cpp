#include "core/quantity/phrase.h"

#include "core/quantity/decimal.h"

#include <ostream>

namespace warmbench {
namespace {

struct InEnglish {
    std::string operator()(const std::string& words) const { return words; }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(Day day) const { return day.iso(); }
    std::string operator()(Celsius temperature) const { return decimal(temperature) + " °C"; }
    std::string operator()(const std::vector<Phrase>& phrases) const {
        std::string all;
        for (const Phrase& one : phrases) all += (all.empty() ? "" : ", ") + one.text();
        return all;
    }
};

} // namespace

std::string Phrase::text() const {
    return filledPattern(m_pattern, m_arguments.size(),
                         [this](std::size_t i) { return std::visit(InEnglish{}, m_arguments[i]); });
}

std::ostream& operator<<(std::ostream& out, const Phrase& phrase) {
    return out << phrase.text();
}

} // namespace warmbench
