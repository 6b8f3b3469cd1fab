#include "ui/map/zone_label.h"

#include "ui/words/say.h"

#include <QPainter>
#include <QStringList>

#include <array>

namespace warmbench::ui {
namespace {

QString troubledWords(int troubled, const Wording& wording) {
    if (troubled == 0) return {};
    return say("%1 to look at").arg(wording.number(troubled));
}

/// Words with the room that they take, measured once.
struct Part {
    QString words;
    int width = 0;
};

Part measured(const QString& words, const QFontMetrics& metrics, int around = 0) {
    return {words, words.isEmpty() ? 0 : metrics.horizontalAdvance(words) + around + headingGap};
}

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
    const auto quiet = [&](const QString& words, int around = 0) {
        return measured(words, kit.quiet, around);
    };
    const QString heatText = heatWords(zone, wording);
    const QString troubleText = troubledWords(zone.troubled, wording);
    const QString takenText = say("%1 of %2").arg(wording.number(zone.taken), wording.number(zone.usable));
    const Part none;
    const Part name = measured(zone.name, kit.strong);
    const Part covered = quiet(heatText + QStringLiteral(" · ") + wording.coverName(zone.cover));
    const Part heat = quiet(heatText);
    const Part shortHeat = quiet(shortHeatWords(zone, wording, false));
    const Part shortestHeat = quiet(shortHeatWords(zone, wording, true));
    const Part trouble = quiet(troubleText, headingGap);
    const Part mark = quiet(troubleText.isEmpty() ? QString() : QStringLiteral("!"), headingGap);
    const Part next = quiet(takenWords(zone, takenText, wording));
    const Part taken = quiet(takenText);
    const QString shortText = wording.number(zone.taken) + u'/' + wording.number(zone.usable);
    const Part shortTaken = quiet(shortText);
    const Part shortNext =
        zone.nextFree && zone.taken < zone.usable
            ? quiet(say("%1, free %2", "slots, day").arg(shortText, wording.shortDate(*zone.nextFree)))
            : next;
    // The fullest that fits.
    const std::array<std::array<const Part*, 3>, 14> candidates{{{&covered, &trouble, &next},
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
    for (const auto& [first, second, third] : candidates)
        if (headingGap + name.width + first->width + second->width + third->width <= width)
            return {zone.name, first->words, second->words, third->words};
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
