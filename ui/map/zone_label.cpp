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

} // namespace

QString heatWords(const SceneZone& zone, const Wording& wording) {
    if (zone.setPoint) return wording.temperature(*zone.setPoint);
    const QString root = wording.temperature(zone.expected);
    return zone.hasMat ? say("mat off, %1").arg(root) : say("no mat, %1").arg(root);
}

ZoneLabel zoneLabel(const SceneZone& zone, int width, const PaintKit& kit) {
    const Wording& wording = kit.wording;
    const QString heatText = heatWords(zone, wording);
    const QString degrees = wording.degrees(zone.setPoint.value_or(zone.expected)) + QStringLiteral("°");
    const QString troubleText = troubledWords(zone.troubled, wording);
    const Part none;
    const Part name = measured(zone.name, kit.strong);
    const Part full = measured(heatText + QStringLiteral(" · ") + wording.coverName(zone.cover), kit.quiet);
    const Part heat = measured(heatText, kit.quiet);
    const Part shortHeat = measured(degrees, kit.quiet);
    const Part trouble = measured(troubleText, kit.quiet, headingGap);
    const Part mark =
        measured(troubleText.isEmpty() ? QString() : QStringLiteral("!"), kit.quiet, headingGap);
    const Part taken =
        measured(say("%1 of %2").arg(wording.number(zone.taken), wording.number(zone.usable)), kit.quiet);
    const Part shortTaken =
        measured(wording.number(zone.taken) + u'/' + wording.number(zone.usable), kit.quiet);
    const std::array<std::array<const Part*, 3>, 8> candidates{{{&full, &trouble, &taken},
                                                                {&full, &trouble, &shortTaken},
                                                                {&heat, &trouble, &shortTaken},
                                                                {&heat, &mark, &shortTaken},
                                                                {&shortHeat, &mark, &shortTaken},
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
