#pragma once

#include "core/season/coverage.h"
#include "ui/wants/table_place.h"

#include <map>

namespace warmbench::ui {

/// What is wanted, and how far each target is covered.
class TargetsPlace : public TablePlace {
    Q_OBJECT
public:
    explicit TargetsPlace(QWidget* parent);

protected:
    void fill(QTreeWidget& table, const BookView& view) override;
    [[nodiscard]] QString hint() const override;
    [[nodiscard]] QString summary() const override { return m_summary; }
    void showChosen(std::int64_t number) override;
    void putIn() override;
    void change(std::int64_t number) override;
    [[nodiscard]] Command removal(std::int64_t number) const override;

private:
    void addTarget(QTreeWidget& table, const BookView& view, const season::TargetCoverage& coverage);
    [[nodiscard]] QString stateWords(const season::TargetCoverage& coverage) const;
    /// `strike 55 softwood cuttings from 3 May to 30 Jun`, and the first thing that is in the way of it.
    [[nodiscard]] QString strikeWords(const season::TargetNeed& need) const;
    /// A day, with its year where that is not this one.
    [[nodiscard]] QString date(Day day) const;
    /// The nursery's own sureness, in percent.
    [[nodiscard]] QString surenessText(const HouseBook& book) const;
    void askFor(const Target& target);

    /// How the chosen target can be met, at once and before anything is planned.
    [[nodiscard]] QString answerWords(const season::TargetCoverage& coverage) const;

    QString m_summary;
    std::map<std::int64_t, season::TargetCoverage> m_coverage; ///< by the target's number
    QLabel* m_answer;
};

} // namespace warmbench::ui
