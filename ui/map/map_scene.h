#pragma once

#include "core/book/progress.h"
#include "core/book/readings.h"
#include "ui/map/letters.h"

#include <QRectF>
#include <QString>

#include <optional>
#include <variant>
#include <vector>

namespace warmbench::ui {

/// What is chosen on the map: nothing, a zone or a batch.
using Selection = std::variant<std::monostate, ZoneId, BatchId>;

/// One container on the map; rows and columns are the zone's.
struct ScenePot {
    int stay = 0; ///< index into MapScene::stays
    int number = 1;
    SlotRect slots;
    int cuttings = 0; ///< that stand in it
    int examined = 0; ///< at its latest check; 0: none
    int rooted = 0;   ///< there
};

/// The containers of one batch in one zone.
struct SceneStay {
    StayId id;
    BatchId batch;
    int zone = 0; ///< index into MapScene::zones
    QString code;
    QString letters;
    QString taxon;
    Progress progress = Progress::Struck;
    std::vector<Trouble> troubles;
    int firstPot = 0; ///< its pots are MapScene::pots[firstPot .. endPot)
    int endPot = 0;
    std::vector<SlotRect> patch; ///< the fewest rectangles found that cover just its pots
    int labelRect = 0;           ///< of patch: the largest, which bears the letters
};

/// Where a zone's heading has room.
enum class HeadingSide : std::uint8_t { Behind, Before, Inside };

struct SceneZone {
    ZoneId id;
    int bench = 0; ///< index into MapScene::benches
    QString name;
    QString title; ///< with its bench
    QRectF area;   ///< millimetres from the corner of the house
    int rows = 1;
    int cols = 1;
    double slot = 130; ///< side, millimetres
    HeadingSide heading = HeadingSide::Behind;
    Cover cover = Cover::Open;
    bool hasMat = false;
    std::optional<Celsius> setPoint;
    Celsius expected{};              ///< root zone
    std::optional<Celsius> measured; ///< root zone, where a logger has told
    int taken = 0;
    int usable = 0;
    std::optional<Day> nextFree;
    std::vector<Slot> blocked;
    int firstStay = 0; ///< its stays are MapScene::stays[firstStay .. endStay)
    int endStay = 0;
    std::vector<int> potAt; ///< [row * cols + col]: index into MapScene::pots, -1 where the slot is free
    int troubled = 0;       ///< batches in it that need a look
};

struct SceneBench {
    BenchId id;
    int house = 0; ///< index into MapScene::houses
    QString name;
    QRectF area;       ///< millimetres from the corner of the house
    double behind = 0; ///< millimetres free behind it, up to the next bench or the wall
    double before = 0; ///< the same on its front side
};

struct SceneHouse {
    HouseId id;
    QString name;
    double length = 0; ///< millimetres
    double width = 0;
    Celsius air{};
    int taken = 0;
    int usable = 0;
};

/// All that the map shows of a book on one day, computed once. It holds no pointer into the book.
struct MapScene {
    Day day;
    std::vector<SceneHouse> houses;
    std::vector<SceneBench> benches;
    std::vector<SceneZone> zones; ///< bench by bench, from back to front and left to right
    std::vector<SceneStay> stays;
    std::vector<ScenePot> pots;
    int taken = 0;
    int usable = 0;

    [[nodiscard]] const SceneZone* find(ZoneId id) const;
    /// The patch of a batch on this day; null where it has none. The first where it stands in two zones.
    [[nodiscard]] const SceneStay* find(BatchId id) const;
};

/// `letters` and `logs` must be of the same book. With `today` what the plan alone weaned by then is shown as
/// it roots, as `progressOn` does.
[[nodiscard]] MapScene mapScene(const HouseBook& book, Day day, const Letters& letters, RootZoneLogs& logs,
                                std::optional<Day> today = {});
[[nodiscard]] MapScene mapScene(const HouseBook& book, Day day, const Letters& letters);

/// The fewest rectangles that a simple merge of rows and then of equal neighbours finds: they cover the given
/// slots exactly. Order of the slots does not matter; they must not overlap.
[[nodiscard]] std::vector<SlotRect> mergedPatch(std::vector<SlotRect> slots);

} // namespace warmbench::ui
