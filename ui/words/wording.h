#pragma once

#include "core/book/progress.h"
#include "core/crop/crop.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>

namespace warmbench::ui {

/// How quantities, days and the trade's words are said to a person: in her locale, in °C or °F.
class Wording {
    Q_DECLARE_TR_FUNCTIONS(Wording)
public:
    explicit Wording(const QLocale& locale = QLocale(), bool fahrenheit = false)
        : m_locale(locale), m_fahrenheit(fahrenheit) {}

    [[nodiscard]] const QLocale& locale() const { return m_locale; }
    [[nodiscard]] bool isFahrenheit() const { return m_fahrenheit; }
    /// `Thursday 4 February 2027`, in the order of the locale.
    [[nodiscard]] QString longDate(Day day) const;
    /// `4 Feb`.
    [[nodiscard]] QString shortDate(Day day) const;
    /// `18 °C`, a decimal only where there is one.
    [[nodiscard]] QString temperature(Celsius temperature) const;
    /// The same without its unit, for scales.
    [[nodiscard]] QString degrees(Celsius temperature) const;
    [[nodiscard]] QString degreeUnit() const;
    [[nodiscard]] QString number(int count) const { return m_locale.toString(count); }
    [[nodiscard]] QString money(Money amount, const std::string& currency) const;
    [[nodiscard]] QString metres(Millimetres length) const;

    [[nodiscard]] QString cover(Cover cover) const;     ///< `under mist`, `open`
    [[nodiscard]] QString coverName(Cover cover) const; ///< `mist`, `open`
    [[nodiscard]] QString wood(Wood wood) const;
    [[nodiscard]] QString progress(Progress progress) const;
    [[nodiscard]] QString stage(Stage stage) const;
    [[nodiscard]] QString trouble(const Trouble& trouble) const;
    /// `1 pot`, `12 pots`: containers that cover one slot are pots, others trays.
    [[nodiscard]] QString containers(int count, const ContainerType& type) const;
    /// `coir 2, perlite 1`, in parts by volume.
    [[nodiscard]] QString medium(const std::vector<MediumComponent>& components) const;
    [[nodiscard]] QString cuttings(int count) const;
    [[nodiscard]] QString days(int count) const;

private:
    QLocale m_locale;
    bool m_fahrenheit;
};

[[nodiscard]] QDate qDate(Day day);
[[nodiscard]] Day dayOf(const QDate& date);
[[nodiscard]] inline QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

} // namespace warmbench::ui
