#include "app/command/worth_table.h"

#include "app/command/cost_json.h"

#include "core/quantity/decimal.h"

#include <algorithm>
#include <vector>

namespace warmbench::app {
namespace {

using planner::MatWorth;
using planner::Problem;
using planner::UnitWorth;
using planner::Worth;

const std::string& zoneName(const Problem& problem, int zone) {
    return problem.zones[static_cast<std::size_t>(zone)].id;
}

std::string alikeWords(int alike) {
    return alike < 2 ? "" : " (one of " + std::to_string(alike) + " alike)";
}

std::string unitWords(const Problem& problem, const UnitWorth& unit) {
    const std::string cuttings = std::to_string(planner::cuttingsOfUnit) + " cuttings";
    switch (unit.of) {
    case UnitWorth::Of::Zone: {
        const int rows = problem.zones[static_cast<std::size_t>(unit.index)].rows;
        return "a column of " + std::to_string(rows) + (rows == 1 ? " slot in " : " slots in ") +
               zoneName(problem, unit.index) + alikeWords(unit.alike);
    }
    case UnitWorth::Of::Stock:
        return cuttings + " more of " + problem.stocks[static_cast<std::size_t>(unit.index)].id;
    case UnitWorth::Of::Day:
        break;
    }
    return "hands for " + cuttings + " more on day " + std::to_string(unit.index);
}

std::string matWords(const Problem& problem, const MatWorth& mat) {
    std::string name = zoneName(problem, mat.zone) + alikeWords(mat.alike);
    return mat.like ? name + " with a mat like that of " + zoneName(problem, *mat.like) : name;
}

/// A column of words, filled up with blanks, and columns of figures.
class Table {
public:
    explicit Table(std::vector<std::string> head) : m_rows{std::move(head)} {}

    void add(std::vector<std::string> row) { m_rows.push_back(std::move(row)); }

    [[nodiscard]] std::string text() const {
        std::vector<std::size_t> widths(m_rows.front().size(), 0);
        for (const auto& row : m_rows)
            for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], row[i].size());
        std::string text;
        for (const auto& row : m_rows) {
            text += row[0] + std::string(widths[0] - row[0].size(), ' ');
            for (std::size_t i = 1; i + 1 < row.size(); ++i)
                text += std::string(widths[i] - row[i].size() + 2, ' ') + row[i];
            text += (row.back().empty() ? "" : "  ") + row.back() + '\n';
        }
        return text;
    }

private:
    std::vector<std::vector<std::string>> m_rows;
};

std::string unitRemark(const UnitWorth& unit) {
    if (!unit.saved) return "by its price alone";
    if (unit.exact) return "exactly";
    return *unit.saved > 0 ? "as far as was searched" : "nothing was found";
}

std::string matRemark(const MatWorth& mat) {
    if (!mat.saves) return "needed for what is held or pinned";
    const char* remark = *mat.saves > 0 ? "keep it" : "leave it off";
    if (mat.like) remark = *mat.saves > 0 ? "worth having, at that a season" : "not worth having";
    return std::string(remark) + (mat.exact ? "" : ", as far as was searched");
}

} // namespace

std::string worthTable(const Problem& problem, const Worth& worth) {
    std::string text;
    Table units({"One unit more of", "dual price", "saves", ""});
    for (const UnitWorth& unit : worth.units)
        units.add({unitWords(problem, unit), decimalText(unit.price, 3),
                   unit.saved ? decimalText(*unit.saved, 3) : "-", unitRemark(unit)});
    if (!worth.priced)
        text += "What one more unit is worth is not known: the problem is too large to price it.\n";
    else if (worth.units.empty())
        text += "No zone, stock or working day is scarce.\n";
    else
        text += units.text();
    if (worth.mats.empty()) return text;
    Table mats({"Mat of", "costs", "saves besides", ""});
    for (const MatWorth& mat : worth.mats)
        mats.add({matWords(problem, mat), decimalText(mat.cost, 3),
                  mat.saves ? decimalText(*mat.saves, 3) : "-", matRemark(mat)});
    return text + mats.text();
}

nlohmann::ordered_json worthJson(const Problem& problem, const Worth& worth) {
    nlohmann::ordered_json units = nlohmann::ordered_json::array();
    for (const UnitWorth& unit : worth.units) {
        nlohmann::ordered_json json;
        if (unit.of == UnitWorth::Of::Zone) json["zone"] = zoneName(problem, unit.index);
        if (unit.of == UnitWorth::Of::Stock)
            json["stock"] = problem.stocks[static_cast<std::size_t>(unit.index)].id;
        if (unit.of == UnitWorth::Of::Day) json["day"] = unit.index;
        json["alike"] = unit.alike;
        json["price"] = unitsJson(unit.price);
        json["saved"] = unit.saved ? unitsJson(*unit.saved) : nullptr;
        json["exact"] = unit.exact;
        units.push_back(std::move(json));
    }
    nlohmann::ordered_json mats = nlohmann::ordered_json::array();
    for (const MatWorth& mat : worth.mats)
        mats.push_back({{"zone", zoneName(problem, mat.zone)},
                        {"alike", mat.alike},
                        {"like", mat.like ? nlohmann::ordered_json(zoneName(problem, *mat.like)) : nullptr},
                        {"cost", unitsJson(mat.cost)},
                        {"saves", mat.saves ? unitsJson(*mat.saves) : nullptr},
                        {"exact", mat.exact}});
    return {{"total", unitsJson(worth.total)},
            {"units", worth.priced ? units : nlohmann::ordered_json(nullptr)},
            {"mats", mats}};
}

} // namespace warmbench::app
