#include "ui/map/zone_label.h"

#include <QFontMetrics>
#include <QStringList>

#include <array>

namespace warmbench::ui {
namespace {

QString say(const char* text) {
    return QCoreApplication::translate("ZoneLabel", text);
}

QString troubledWords(int troubled, const Wording& wording) {
    if (troubled == 0) return {};
    return say("%1 to look at").arg(wording.number(troubled));
}

int widthOf(const ZoneLabel& label, const QFontMetrics& strong, const QFontMetrics& quiet) {
    int width = headingGap;
    const auto add = [&](const QString& part, const QFontMetrics& metrics, int around) {
        if (!part.isEmpty()) width += metrics.horizontalAdvance(part) + around + headingGap;
    };
    add(label.name, strong, 0);
    add(label.heat, quiet, 0);
    add(label.trouble, quiet, headingGap);
    add(label.taken, quiet, 0);
    return width;
}

} // namespace

QString heatWords(const SceneZone& zone, const Wording& wording) {
    if (zone.setPoint) return wording.temperature(*zone.setPoint);
    const QString root = wording.temperature(zone.expected);
    return zone.hasMat ? say("mat off, %1").arg(root) : say("no mat, %1").arg(root);
}

ZoneLabel zoneLabel(const SceneZone& zone, int width, const TypeSizes& type, const Wording& wording) {
    const QFontMetrics strong(type.strong);
    const QFontMetrics quiet(type.quiet);
    const QString heat = heatWords(zone, wording);
    const QString withCover = heat + QStringLiteral(" · ") + wording.coverName(zone.cover);
    const QString shortHeat = wording.degrees(zone.setPoint.value_or(zone.expected)) + QStringLiteral("°");
    const QString taken = say("%1 of %2").arg(wording.number(zone.taken), wording.number(zone.usable));
    const QString shortTaken = wording.number(zone.taken) + u'/' + wording.number(zone.usable);
    const QString trouble = troubledWords(zone.troubled, wording);
    const QString mark = trouble.isEmpty() ? QString() : QStringLiteral("!");
    const std::array<ZoneLabel, 9> candidates{{
        {zone.name, withCover, trouble, taken},
        {zone.name, withCover, trouble, shortTaken},
        {zone.name, heat, trouble, shortTaken},
        {zone.name, heat, mark, shortTaken},
        {zone.name, shortHeat, mark, shortTaken},
        {zone.name, shortHeat, mark, {}},
        {zone.name, {}, mark, {}},
        {zone.name, {}, {}, {}},
        {},
    }};
    for (const ZoneLabel& label : candidates)
        if (widthOf(label, strong, quiet) <= width) return label;
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
    parts += say("%1 containers in zone %2").arg(wording.number(pots), zone.name);
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

} // namespace warmbench::ui
