#include "ui/map/zone_label.h"

#include "ui/words/say.h"

#include <QPainter>
#include <QStringList>

#include <array>
#include <functional>
#include <optional>
#include <utility>

namespace warmbench::ui {
namespace {

QString troubledWords(int troubled, const Wording& wording) {
    if (troubled == 0) return {};
    return say("%1 to look at").arg(wording.number(troubled));
}

/// Words with the room that they take, made and measured when they are first asked for: there are hundreds of
/// headings in sight, and most of what could be said does not fit.
class Part {
public:
    Part(const QFontMetrics& metrics, std::function<QString()> make, int around = 0)
        : m_metrics(metrics), m_make(std::move(make)), m_around(around) {}

    [[nodiscard]] const QString& words() {
        if (!m_words) m_words = m_make();
        return *m_words;
    }
    [[nodiscard]] int width() {
        if (m_width < 0)
            m_width = words().isEmpty() ? 0 : m_metrics.horizontalAdvance(*m_words) + m_around + headingGap;
        return m_width;
    }

private:
    const QFontMetrics& m_metrics;
    std::function<QString()> m_make;
    int m_around;
    std::optional<QString> m_words;
    int m_width = -1;
};

/// How far the root zone may lie from its set-point before the heading marks it: a decision of this program.
constexpr Celsius marked = Celsius{10};

/// `18° of 20°` or `18/20°`, the root zone against its set-point, marked where it is well below or above it.
QString shortHeatWords(const SceneZone& zone, const Wording& wording, bool shortest) {
    const Celsius root = rootZoneOf(zone);
    const QString is = wording.degrees(root);
    if (!zone.setPoint || root == *zone.setPoint) return is + u'°';
    const QString set = wording.degrees(*zone.setPoint) + u'°';
    const QString words =
        shortest ? is + u'/' + set : say("%1 of %2", "root zone, set-point").arg(is + u'°', set);
    if (root <= *zone.setPoint - marked) return QStringLiteral("▼ ") + words;
    return root >= *zone.setPoint + marked ? QStringLiteral("▲ ") + words : words;
}

/// Slots taken, and the day on which more fall free; `taken` where that day is not known.
QString takenWords(const SceneZone& zone, const QString& taken, const Wording& wording) {
    if (!zone.nextFree) return taken;
    const QString day = wording.shortDate(*zone.nextFree);
    return zone.taken < zone.usable ? say("%1, next free %2").arg(taken, day) : say("full until %1").arg(day);
}

} // namespace

Celsius rootZoneOf(const SceneZone& zone) {
    return zone.measured.value_or(zone.expected);
}

QString heatWords(const SceneZone& zone, const Wording& wording) {
    const QString root = wording.temperature(rootZoneOf(zone));
    const QString known = zone.measured ? say("%1 measured").arg(root) : root;
    if (!zone.setPoint) return zone.hasMat ? say("mat off, %1").arg(known) : say("no mat, %1").arg(known);
    const QString set = wording.temperature(*zone.setPoint);
    if (zone.measured) return say("%1 set, %2").arg(set, known);
    return zone.expected == *zone.setPoint ? set : say("%1 set, %2 expected").arg(set, root);
}

ZoneLabel zoneLabel(const SceneZone& zone, int width, const PaintKit& kit) {
    const Wording& wording = kit.wording;
    const int room = width - 2 * headingGap - kit.strong.horizontalAdvance(zone.name);
    if (room < 0) return {};
    const auto count = [&](int slots) { return wording.number(slots); };
    const auto takenText = [&] { return say("%1 of %2").arg(count(zone.taken), count(zone.usable)); };
    const auto shortText = [&] { return count(zone.taken) + u'/' + count(zone.usable); };
    const auto nextText = [&] { return takenWords(zone, takenText(), wording); };
    Part none(kit.quiet, [] { return QString(); });
    Part heat(kit.quiet, [&] { return heatWords(zone, wording); });
    Part covered(kit.quiet,
                 [&] { return heat.words() + QStringLiteral(" · ") + wording.coverName(zone.cover); });
    Part shortHeat(kit.quiet, [&] { return shortHeatWords(zone, wording, false); });
    Part shortestHeat(kit.quiet, [&] { return shortHeatWords(zone, wording, true); });
    Part trouble(
        kit.quiet, [&] { return troubledWords(zone.troubled, wording); }, headingGap);
    Part mark(
        kit.quiet, [&] { return zone.troubled == 0 ? QString() : QStringLiteral("!"); }, headingGap);
    Part next(kit.quiet, nextText);
    Part taken(kit.quiet, takenText);
    Part shortTaken(kit.quiet, shortText);
    Part shortNext(kit.quiet, [&] {
        if (!zone.nextFree || zone.taken >= zone.usable) return nextText();
        return say("%1, free %2", "slots, day").arg(shortText(), wording.shortDate(*zone.nextFree));
    });
    // The fullest that fits.
    const std::array<std::array<Part*, 3>, 14> candidates{{{&covered, &trouble, &next},
                                                           {&heat, &trouble, &next},
                                                           {&shortHeat, &trouble, &next},
                                                           {&shortHeat, &trouble, &shortNext},
                                                           {&shortHeat, &mark, &shortNext},
                                                           {&covered, &trouble, &taken},
                                                           {&covered, &trouble, &shortTaken},
                                                           {&heat, &trouble, &shortTaken},
                                                           {&heat, &mark, &shortTaken},
                                                           {&shortHeat, &mark, &shortTaken},
                                                           {&shortestHeat, &mark, &shortTaken},
                                                           {&shortHeat, &mark, &none},
                                                           {&none, &mark, &none},
                                                           {&none, &none, &none}}};
    for (const auto& parts : candidates) {
        int left = room;
        for (Part* part : parts)
            if (left >= 0) left -= part->width();
        if (left >= 0) return {zone.name, parts[0]->words(), parts[1]->words(), parts[2]->words()};
    }
    return {};
}

QString zoneSentence(const SceneZone& zone, const Wording& wording) {
    QStringList parts{say("Zone %1").arg(zone.name)};
    parts += heatWords(zone, wording) + u' ' + wording.cover(zone.cover);
    parts += say("%1 of %2 slots taken").arg(wording.number(zone.taken), wording.number(zone.usable));
    if (zone.nextFree) parts += say("next ones free on %1").arg(wording.shortDate(*zone.nextFree));
    if (zone.troubled > 0) parts += say("%1 to look at").arg(wording.number(zone.troubled));
    return parts.join(QStringLiteral(", "));
}

QString staySentence(const MapScene& scene, const SceneStay& stay, const Wording& wording) {
    const SceneZone& zone = scene.zones[static_cast<std::size_t>(stay.zone)];
    const int pots = stay.endPot - stay.firstPot;
    QStringList parts{say("Batch %1").arg(stay.code), stay.taxon, wording.progress(stay.progress)};
    parts += (pots == 1 ? say("%1 container in zone %2") : say("%1 containers in zone %2"))
                 .arg(wording.number(pots), zone.name);
    for (const Trouble& trouble : stay.troubles) parts += wording.trouble(trouble);
    return parts.join(QStringLiteral(", "));
}

QString potSentence(const ScenePot& pot, const Wording& wording) {
    QString words = say("Container %1: %2").arg(wording.number(pot.number), wording.cuttings(pot.cuttings));
    if (pot.examined > 0)
        words += say("; %1 of %2 rooted at its last check")
                     .arg(wording.number(pot.rooted), wording.number(pot.examined));
    return words;
}

void paintZoneHeading(QPainter& painter, const QRect& strip, bool outside, const SceneZone& zone,
                      const PaintKit& kit, int keptFree) {
    const ZoneLabel label = zoneLabel(zone, strip.width() - keptFree, kit);
    const QFontMetrics& quiet = kit.quiet;
    const QFontMetrics& strong = kit.strong;
    if (!outside && (label.name.isEmpty() || strip.height() < strong.height())) return;
    const QColor ground = kit.palette.heatAt(zone.setPoint);
    painter.fillRect(outside ? strip.adjusted(1, 0, 0, -1) : strip, ground);
    const QColor colour = kit.palette.textOn(ground);
    const double baseline = strip.center().y() + strong.ascent() / 2.0;
    double x = strip.left() + headingGap;
    const auto put = [&](const QString& words, const QFont& font, const QFontMetrics& metrics) {
        if (words.isEmpty()) return;
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(QPointF(x, baseline), words);
        x += metrics.horizontalAdvance(words) + headingGap;
    };
    put(label.name, kit.type.strong, strong);
    put(label.heat, kit.type.quiet, quiet);
    if (!label.trouble.isEmpty()) {
        const QRectF chip(x - 2, strip.top() + 3, quiet.horizontalAdvance(label.trouble) + headingGap,
                          strip.height() - 6);
        painter.fillRect(chip, kit.palette.troubleGround);
        painter.setPen(kit.palette.trouble);
        painter.setFont(kit.type.quiet);
        painter.drawText(QPointF(chip.left() + headingGap / 2.0, baseline), label.trouble);
    }
    x = strip.right() - keptFree - headingGap - quiet.horizontalAdvance(label.taken) + 1;
    put(label.taken, kit.type.quiet, quiet);
}

} // namespace warmbench::ui
