#include "ui/words/wording.h"

#include "ui/words/local_dates.h"

#include <QDate>

#include <cmath>

namespace warmbench::ui {
namespace {

/// A long date, in English without the comma that its locales put after the day's name.
QString plainDateFormat(const QLocale& locale) {
    if (locale.language() != QLocale::English) return locale.dateFormat(QLocale::LongFormat);
    return locale.dateFormat(QLocale::LongFormat).replace(QStringLiteral(", "), QStringLiteral(" "));
}

} // namespace

QDate qDate(Day day) {
    return {day.year(), static_cast<int>(day.month()), static_cast<int>(day.dayOfMonth())};
}

Day dayOf(const QDate& date) {
    return Day::fromNumber(static_cast<int>(QDate(1970, 1, 1).daysTo(date)));
}

QString Wording::longDate(Day day) const {
    return m_locale.toString(qDate(day), plainDateFormat(m_locale));
}

QString Wording::shortDate(Day day) const {
    return dayAndMonth(qDate(day), m_locale);
}

QString Wording::degrees(Celsius temperature) const {
    const double shown = m_fahrenheit ? temperature.units() * 9 / 5 + 32 : temperature.units();
    const double rounded = std::round(shown * 10) / 10;
    const bool whole = std::abs(rounded - std::round(rounded)) < 0.05;
    return m_locale.toString(rounded, 'f', whole ? 0 : 1);
}

QString Wording::degreeUnit() const {
    return m_fahrenheit ? QStringLiteral("°F") : QStringLiteral("°C");
}

QString Wording::temperature(Celsius temperature) const {
    return degrees(temperature) + QChar(0x00A0) + degreeUnit();
}

QString Wording::money(Money amount, const std::string& currency) const {
    return m_locale.toString(amount.units(), 'f', 2) + QChar(0x00A0) + text(currency);
}

QString Wording::metres(Millimetres length) const {
    const int decimals = length.parts % 100 == 0 ? 1 : length.parts % 10 == 0 ? 2 : 3;
    return m_locale.toString(static_cast<double>(length.parts) / 1000, 'f', decimals);
}

QString Wording::cover(Cover cover) const {
    switch (cover) {
    case Cover::Open:
        return tr("open");
    case Cover::Bag:
        return tr("under bags");
    case Cover::Tent:
        return tr("under a tent");
    case Cover::Mist:
        return tr("under mist");
    case Cover::Fog:
        return tr("in fog");
    }
    return {};
}

QString Wording::coverName(Cover cover) const {
    switch (cover) {
    case Cover::Open:
        return tr("open");
    case Cover::Bag:
        return tr("bag");
    case Cover::Tent:
        return tr("tent");
    case Cover::Mist:
        return tr("mist");
    case Cover::Fog:
        return tr("fog");
    }
    return {};
}

QString Wording::wood(Wood wood) const {
    switch (wood) {
    case Wood::Softwood:
        return tr("softwood");
    case Wood::SemiRipe:
        return tr("semi-ripe");
    case Wood::Hardwood:
        return tr("hardwood");
    case Wood::EvergreenHardwood:
        return tr("evergreen hardwood");
    case Wood::Basal:
        return tr("basal");
    case Wood::LeafBud:
        return tr("leaf-bud");
    }
    return {};
}

QString Wording::progress(Progress progress) const {
    switch (progress) {
    case Progress::Planned:
        return tr("planned");
    case Progress::Struck:
        return tr("struck");
    case Progress::Callused:
        return tr("callused");
    case Progress::Rooted:
        return tr("rooted");
    case Progress::Weaning:
        return tr("weaning");
    case Progress::Ready:
        return tr("ready to pot on");
    }
    return {};
}

QString Wording::stage(Stage stage) const {
    switch (stage) {
    case Stage::Rooting:
        return tr("rooting");
    case Stage::Weaning:
        return tr("weaning");
    case Stage::GrowingOn:
        return tr("growing on");
    }
    return {};
}

QString Wording::trouble(const Trouble& trouble) const {
    switch (trouble.kind) {
    case TroubleKind::TooCold:
        return tr("too cold: %1, needs at least %2")
            .arg(temperature(trouble.rootZone), temperature(trouble.limit));
    case TroubleKind::TooWarm:
        return tr("too warm: %1, at most %2 is right")
            .arg(temperature(trouble.rootZone), temperature(trouble.limit));
    case TroubleKind::WrongCover:
        return tr("its recipe does not name this cover");
    case TroubleKind::Dying:
        return (trouble.dead == 1 ? tr("%1 of %2 was dead at the last checks")
                                  : tr("%1 of %2 were dead at the last checks"))
            .arg(number(trouble.dead), number(trouble.examined));
    }
    return {};
}

QString Wording::containers(int count, const ContainerType& type) const {
    const bool pot = type.footprint == Footprint{1, 1};
    if (count == 1) return pot ? tr("1 pot") : tr("1 tray");
    return pot ? tr("%1 pots").arg(number(count)) : tr("%1 trays").arg(number(count));
}

QString Wording::medium(const std::vector<MediumComponent>& components) const {
    QStringList words;
    for (const MediumComponent& component : components)
        words += text(component.name) + u' ' + number(component.parts);
    return words.join(QStringLiteral(", "));
}

QString Wording::cuttings(int count) const {
    return count == 1 ? tr("1 cutting") : tr("%1 cuttings").arg(number(count));
}

QString Wording::days(int count) const {
    return count == 1 ? tr("1 day") : tr("%1 days").arg(number(count));
}

} // namespace warmbench::ui
