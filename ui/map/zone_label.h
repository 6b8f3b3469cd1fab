#pragma once

#include "ui/map/map_scene.h"
#include "ui/map/paint_kit.h"

class QPainter;

namespace warmbench::ui {

/// The words of a zone's heading, cut down to what a width holds; never elided.
struct ZoneLabel {
    QString name;
    QString heat;    ///< as heatWords(), perhaps with the cover, or only `16.5° of 18°`
    QString trouble; ///< `2 to look at`
    QString taken;   ///< `68 of 96`, perhaps with the day on which more fall free
};

/// Pixels between the parts of a heading and at its ends.
inline constexpr int headingGap = 8;

[[nodiscard]] ZoneLabel zoneLabel(const SceneZone& zone, int width, const PaintKit& kit);

/// Paints a zone's heading into its strip, `keptFree` pixels at its end left for something else. `outside`:
/// over the slots; else on them, and not at all where they are too small for it.
void paintZoneHeading(QPainter& painter, const QRect& strip, bool outside, const SceneZone& zone,
                      const PaintKit& kit, int keptFree = 0);

/// The root zone as it is: measured where there is a log, else as expected.
[[nodiscard]] Celsius rootZoneOf(const SceneZone& zone);
/// The set-point and the root zone against it: `18 °C set, 16.5 °C measured`, `18 °C` where just that is
/// expected, `mat off, 11 °C` or `no mat, 11 °C`.
[[nodiscard]] QString heatWords(const SceneZone& zone, const Wording& wording);
/// The whole of it for a tooltip or a screen reader: `Zone A, 18 °C under mist, 68 of 96 slots taken, ...`.
[[nodiscard]] QString zoneSentence(const SceneZone& zone, const Wording& wording);
/// `Batch 27-008-D, Olearia × haastii, rooted, 16 pots in zone A`.
[[nodiscard]] QString staySentence(const MapScene& scene, const SceneStay& stay, const Wording& wording);
/// `Pot 7: 8 cuttings; 5 of 8 rooted at its last check`.
[[nodiscard]] QString potSentence(const ScenePot& pot, const Wording& wording);

} // namespace warmbench::ui
