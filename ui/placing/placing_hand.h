#pragma once

#include "core/placing/suitability.h"
#include "ui/map/map_hand.h"

#include <QObject>

#include <memory>

namespace warmbench::ui {

/// A batch, or containers of it, carried over the bench map. It is taken up by mouse or by key, aimed,
/// turned, and put down as one command; until then nothing is changed, and Escape puts it back.
///
/// Keys while it is carried: arrows aim slot by slot and on into the zone beside, Tab goes to the next zone
/// that suits and Shift Tab back, T turns, Enter puts down, Escape puts back.
class PlacingHand : public QObject, public MapHand {
    Q_OBJECT
public:
    enum class State : std::uint8_t {
        Empty,
        Carrying,
        Asking, ///< whether containers that have been struck are really to be moved
    };

    explicit PlacingHand(QObject* parent = nullptr) : QObject(parent) {}

    void setWording(const Wording& wording) { m_wording = &wording; }
    /// Takes up containers of a batch, with none named all. The book must not change while they are carried.
    /// What is still to pass until a struck batch is ready is as its checks up to that day foretell.
    Outcome take(const HouseBook& book, BatchId batch, std::vector<int> containers, Day day);
    /// Carries these containers of the same batch instead.
    Outcome takeInstead(std::vector<int> containers);
    /// A drag is let go where it ends; what is carried without one is put down by a click.
    void setDragging(bool dragging) { m_dragging = dragging; }
    void putBack();

    [[nodiscard]] State state() const { return m_state; }
    [[nodiscard]] const placing::Suitability* suitability() const { return m_suitability.get(); }
    [[nodiscard]] const HouseBook& book() const { return *m_book; }
    [[nodiscard]] std::optional<ZoneId> aimedZone() const { return m_zone; }
    [[nodiscard]] const std::vector<SlotRect>& slots() const { return m_slots; }
    [[nodiscard]] bool isTurned() const { return m_turned; }
    /// Whether it can be put down where it is aimed.
    [[nodiscard]] bool fits() const;
    /// What is carried, and what the zone aimed at is to it; or what is asked.
    [[nodiscard]] QString title() const;
    [[nodiscard]] QStringList words() const;

    void aimAt(ZoneId zone, Slot slot);
    void aimNowhere();
    void turn();
    /// Puts down where it is aimed; asks first where containers have been struck.
    void putDown();
    /// The answer to what was asked.
    void answer(bool yes);

    [[nodiscard]] bool isActive() const override { return m_state != State::Empty; }
    void paintZones(QPainter& painter, const View& view) const override;
    void paintAim(QPainter& painter, const View& view) const override;
    void pointAt(const MapScene& scene, const MapHit& hit) override;
    void letGo() override;
    bool key(const MapScene& scene, const MapLayout& layout, const QKeyEvent& event) override;

Q_SIGNALS:
    /// Something else is carried, or nothing any more.
    void heldChanged();
    /// The aim or the question.
    void aimChanged();
    /// It was put down: this is to be done.
    void placed(const warmbench::Command& command);

private:
    void step(const MapScene& scene, const MapLayout& layout, QPoint direction);
    void goToSuitable(const MapScene& scene, int by);
    void hold(placing::Carried carried);

    const HouseBook* m_book = nullptr;
    std::unique_ptr<forecast::BookForecast> m_forecast; ///< of the batch carried alone
    const Wording* m_wording = nullptr;
    std::unique_ptr<placing::Suitability> m_suitability;
    State m_state = State::Empty;
    std::optional<ZoneId> m_zone;
    Slot m_aim;
    bool m_turned = false;
    bool m_dragging = false;
    std::vector<SlotRect> m_slots;
};

} // namespace warmbench::ui
