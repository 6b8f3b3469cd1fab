#include "integer_program.h"

#include "core/planner/bound/formulation.h"

#include <coin/Cbc_C_Interface.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <limits>
#include <map>
#include <memory>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace warmbench::speed {
namespace {

using namespace planner;

constexpr double infinity = std::numeric_limits<double>::max();

/// Columns and rows of an integer program, all columns 0 or 1.
class Program {
public:
    int column(double cost) {
        m_costs.push_back(cost);
        m_entries.emplace_back();
        return static_cast<int>(m_costs.size()) - 1;
    }
    int row(double low, double high) {
        m_low.push_back(low);
        m_high.push_back(high);
        return static_cast<int>(m_low.size()) - 1;
    }
    void add(int row, int column, double factor) {
        m_entries[static_cast<std::size_t>(column)][row] += factor;
    }
    [[nodiscard]] std::size_t columns() const { return m_costs.size(); }

    [[nodiscard]] CbcRun solve(double seconds) const {
        std::vector<CoinBigIndex> starts{0};
        std::vector<int> rows;
        std::vector<double> factors;
        for (const auto& entries : m_entries) {
            for (const auto& [row, factor] : entries) {
                rows.push_back(row);
                factors.push_back(factor);
            }
            starts.push_back(static_cast<CoinBigIndex>(rows.size()));
        }
        const std::vector<double> zeros(columns(), 0);
        const std::vector<double> ones(columns(), 1);
        const std::unique_ptr<Cbc_Model, void (*)(Cbc_Model*)> model(Cbc_newModel(), Cbc_deleteModel);
        Cbc_loadProblem(model.get(), static_cast<int>(columns()), static_cast<int>(m_low.size()),
                        starts.data(), rows.data(), factors.data(), zeros.data(), ones.data(), m_costs.data(),
                        m_low.data(), m_high.data());
        for (int i = 0; i < static_cast<int>(columns()); ++i) Cbc_setInteger(model.get(), i);
        Cbc_setParameter(model.get(), "seconds", std::to_string(seconds).c_str());
        Cbc_setParameter(model.get(), "timeMode", "elapsed");
        Cbc_setParameter(model.get(), "logLevel", "1");
        const auto begin = std::chrono::steady_clock::now();
        Cbc_solve(model.get());
        CbcRun run;
        run.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
        run.proven = Cbc_isProvenOptimal(model.get()) != 0;
        if (Cbc_bestSolution(model.get()) != nullptr) run.total = Cbc_getObjValue(model.get());
        run.bound = run.proven ? Cbc_getObjValue(model.get()) : Cbc_getBestPossibleObjValue(model.get());
        run.columns = static_cast<int>(columns());
        run.rows = static_cast<int>(m_low.size());
        return run;
    }

private:
    std::vector<double> m_costs;
    std::vector<std::map<int, double>> m_entries; ///< by column: factor by row
    std::vector<double> m_low;
    std::vector<double> m_high;
};

double money(double units) {
    return units / Formulation::unitsPerThousandth / 1000;
}

/// Each zone by itself: what is packed in one zone cannot be shared out over several.
ZoneKinds eachByItself(const Problem& problem) {
    ZoneKinds zones;
    for (const Zone& zone : problem.zones) {
        const int index = static_cast<int>(zones.kinds.size());
        int slots = zone.rows * zone.cols;
        for (const char blocked : zone.blocked) slots -= blocked != 0 ? 1 : 0;
        zones.kinds.push_back({index, 1, slots});
        zones.ofZone.push_back(index);
    }
    return zones;
}

/// The program of a formulation whose kinds are single zones.
class Model {
public:
    explicit Model(const Formulation& formulation) : m_formulation(formulation) {
        for (std::size_t i = 0; i < formulation.shelves.size(); ++i) addZone(static_cast<int>(i));
        for (const Link& link : formulation.links) m_links.push_back(m_program.column(money(link.cost)));
        for (const BatchChains& batch : formulation.batches) addBatch(batch);
        for (std::size_t i = 0; i < m_links.size(); ++i) stand(formulation.links[i], m_links[i]);
        for (const LabourDay& day : formulation.labour) addLabour(day);
        for (const StockGroup& group : formulation.stockGroups)
            for (std::size_t i = 0; i < group.ends.size(); ++i)
                limitCuttings(group.batches, 0, group.ends[i], group.limits[i]);
        for (std::size_t i = 0; i < formulation.strikeRows.size(); ++i) addStrikeRow(static_cast<int>(i));
    }

    [[nodiscard]] const Program& program() const { return m_program; }

private:
    /// Whether the zone has a set-point on a day, and the slots there: on each day at most one set-point.
    void addZone(int kind) {
        const ZoneShelf& shelf = m_formulation.shelves[static_cast<std::size_t>(kind)];
        for (const int day : shelf.days) {
            const int one = m_program.row(-infinity, 1);
            for (std::size_t state = 0; state < shelf.dayCost.size(); ++state) {
                const int runs = m_program.column(money(shelf.dayCost[state]));
                m_program.add(one, runs, 1);
                const int room = m_program.row(-infinity, 0);
                m_program.add(room, runs, -shelf.slots);
                m_states[{kind, static_cast<int>(state) - 1, day}] = {runs, room};
            }
        }
        for (const HeldZone& held : shelf.held) addHeld(kind, held);
    }

    void addHeld(int kind, const HeldZone& held) {
        const int one = m_program.row(1, 1);
        for (const HeldState& state : held.states) {
            const int chosen = m_program.column(0);
            m_program.add(one, chosen, 1);
            for (std::size_t day = 0; day < state.load.size(); ++day) {
                const auto [runs, room] = m_states.at({kind, state.setPoint, static_cast<int>(day)});
                m_program.add(room, chosen, state.load[day]);
                const int needs = m_program.row(-infinity, 0);
                m_program.add(needs, chosen, 1);
                m_program.add(needs, runs, -1);
            }
        }
    }

    /// One chain of stays, or none.
    void addBatch(const BatchChains& batch) {
        const int one = m_program.row(1, 1);
        if (batch.mayStayOut) m_program.add(one, m_program.column(money(batch.value)), 1);
        for (std::size_t i = batch.stays[0]; i < batch.stays[1]; ++i) m_program.add(one, m_links[i], 1);
        std::map<int, int> reached;  // by node: what comes in goes on, from it or from a node of the kept
        std::map<int, int> keptRows; // by kept node: what goes on from it has come in there
        std::map<int, int> nodeOfKept;
        for (std::size_t i = batch.stays[0]; i < batch.stays.back(); ++i) {
            const Link& link = m_formulation.links[i];
            if (link.exit == batch.firstNode + 1) continue;
            if (!reached.contains(link.exit)) reached[link.exit] = m_program.row(0, 0);
            m_program.add(reached[link.exit], m_links[i], 1);
            if (link.keptExit < 0) continue;
            nodeOfKept[link.keptExit] = link.exit;
            if (!keptRows.contains(link.keptExit)) keptRows[link.keptExit] = m_program.row(-infinity, 0);
            m_program.add(keptRows[link.keptExit], m_links[i], -1);
        }
        for (std::size_t i = batch.stays[1]; i < batch.stays.back(); ++i) {
            const int entry = m_formulation.links[i].entry;
            const auto kept = nodeOfKept.find(entry);
            if (kept != nodeOfKept.end()) m_program.add(keptRows.at(entry), m_links[i], 1);
            m_program.add(reached.at(kept != nodeOfKept.end() ? kept->second : entry), m_links[i], -1);
        }
    }

    void stand(const Link& link, int column) {
        const Lane& lane = m_formulation.lanes[static_cast<std::size_t>(link.lane)];
        for (int day = link.choice.from; day < std::min(link.choice.to, m_formulation.days); ++day) {
            const auto [runs, room] = m_states.at({lane.kind, lane.setPoint, day});
            m_program.add(room, column, lane.slots);
            // No day without the set-point, however few slots are taken.
            int& needs = m_needs.try_emplace({lane.batch, lane.kind, lane.setPoint, day}, -1).first->second;
            if (needs < 0) {
                needs = m_program.row(-infinity, 0);
                m_program.add(needs, runs, -1);
            }
            m_program.add(needs, column, 1);
        }
    }

    void addLabour(const LabourDay& day) {
        const int row = m_program.row(-infinity, day.cuttings);
        std::map<int, int> cuttings;
        for (const LabourDay::Strike& strike : day.strikes)
            cuttings[static_cast<int>(strike.price)] = strike.cuttings;
        for (std::size_t i = 0; i < m_links.size(); ++i)
            if (const auto found = cuttings.find(m_formulation.links[i].labourPrice); found != cuttings.end())
                m_program.add(row, m_links[i], found->second);
    }

    void addStrikeRow(int index) {
        const StrikeRow& strike = m_formulation.strikeRows[static_cast<std::size_t>(index)];
        std::vector<int> batches;
        for (std::size_t b = 0; b < m_formulation.batches.size(); ++b)
            for (const int row : m_formulation.batches[b].strikeRows)
                if (row == index) batches.push_back(static_cast<int>(b));
        limitCuttings(batches, strike.fromDay, strike.toDay, strike.limit);
    }

    void limitCuttings(const std::vector<int>& batches, int from, int to, double limit) {
        const int row = m_program.row(-infinity, limit);
        for (const int index : batches) {
            const BatchChains& batch = m_formulation.batches[static_cast<std::size_t>(index)];
            for (std::size_t i = batch.stays[0]; i < batch.stays[1]; ++i)
                if (m_formulation.links[i].strikeDay >= from && m_formulation.links[i].strikeDay < to)
                    m_program.add(row, m_links[i], batch.cuttings);
        }
    }

    const Formulation& m_formulation;
    Program m_program;
    std::vector<int> m_links;                                          ///< column of each link
    std::map<std::tuple<int, int, int>, std::pair<int, int>> m_states; ///< by kind, set-point and day
    std::map<std::tuple<int, int, int, int>, int> m_needs;             ///< by batch, kind, set-point and day
};

bool isPlate(const Problem& problem) {
    if (problem.days != 1 || problem.zones.size() != 1 || problem.zones[0].hasMat) return false;
    for (const Batch& batch : problem.batches)
        if (batch.containers != 1 || batch.turn || batch.stays.size() != 1) return false;
    return true;
}

/// Two-dimensional cutting: a column for each place of each piece (Beasley 1985).
Program plateProgram(const Problem& problem) {
    Program program;
    const Zone& zone = problem.zones[0];
    std::vector<int> slots;
    for (const char blocked : zone.blocked) slots.push_back(program.row(-infinity, blocked != 0 ? 0 : 1));
    for (const Batch& batch : problem.batches) {
        const int one = program.row(1, 1);
        program.add(one, program.column(static_cast<double>(batch.value) / 100), 1);
        for (int row = 0; row + batch.footprint.height <= zone.rows; ++row)
            for (int col = 0; col + batch.footprint.width <= zone.cols; ++col) {
                const int column = program.column(0);
                program.add(one, column, 1);
                for (int r = row; r < row + batch.footprint.height; ++r)
                    for (int c = col; c < col + batch.footprint.width; ++c) {
                        const int cell = r * zone.cols + c;
                        program.add(slots[static_cast<std::size_t>(cell)], column, 1);
                    }
            }
    }
    return program;
}

} // namespace

std::optional<CbcRun> solveByCbc(const Problem& problem, double seconds, std::size_t mostColumns) {
    if (isPlate(problem)) return plateProgram(problem).solve(seconds);
    const Formulation formulation = formulate(problem, eachByItself(problem), {});
    if (formulation.links.size() > mostColumns) return std::nullopt;
    const Model model(formulation);
    if (model.program().columns() > mostColumns) return std::nullopt;
    return model.program().solve(seconds);
}

} // namespace warmbench::speed
