#include "ui/map/bench_map.h"

#include "ui/map/bench_map_access.h"
#include "ui/map/zone_label.h"

#include <QApplication>
#include <QHelpEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>

#include <cmath>

namespace warmbench::ui {
namespace {

constexpr double zoomStep = 1.25;
constexpr int ringWidth = 2;

} // namespace

BenchMap::BenchMap(QWidget* parent)
    : QAbstractScrollArea(parent), m_palette(&lightPalette()), m_type(nullptr), m_wording(nullptr) {
    installBenchMapAccess();
    setObjectName(QStringLiteral("benchMap"));
    setAccessibleName(tr("Bench map"));
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setViewportMargins(ringWidth, ringWidth, ringWidth, ringWidth);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    viewport()->setAttribute(Qt::WA_AcceptTouchEvents);
    viewport()->grabGesture(Qt::PinchGesture);
    viewport()->setMouseTracking(true);
    // A house stands as it stands, whatever the direction of reading.
    horizontalScrollBar()->setLayoutDirection(Qt::LeftToRight);
    setMinimumSize(240, 160);
}

void BenchMap::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = &wording;
    m_under = {};
    update();
    viewport()->update();
}

void BenchMap::showScene(MapScene scene) {
    m_scene = std::move(scene);
    if (m_fitted)
        fit();
    else
        setMapLayout(MapLayout(m_scene, m_layout.columns(), m_layout.scale()));
}

void BenchMap::setMapLayout(MapLayout layout) {
    m_layout = std::move(layout);
    m_under = {};
    updateScrollBars();
    viewport()->update();
}

void BenchMap::updateScrollBars() {
    const QSize size = m_layout.size().toSize();
    const QSize room = viewport()->size();
    horizontalScrollBar()->setPageStep(room.width());
    horizontalScrollBar()->setRange(0, m_fitted ? 0 : std::max(0, size.width() - room.width()));
    verticalScrollBar()->setPageStep(room.height());
    verticalScrollBar()->setRange(0, m_fitted ? 0 : std::max(0, size.height() - room.height()));
}

QPoint BenchMap::origin() const {
    const QSize spare = viewport()->size() - m_layout.size().toSize();
    return {spare.width() > 0 ? spare.width() / 2 : -horizontalScrollBar()->value(),
            spare.height() > 0 ? spare.height() / 2 : -verticalScrollBar()->value()};
}

void BenchMap::fit() {
    m_fitted = true;
    setMapLayout(MapLayout::fitted(m_scene, viewport()->size()));
}

void BenchMap::zoomIn() {
    zoomBy(zoomStep, QRectF(viewport()->rect()).center());
}

void BenchMap::zoomOut() {
    zoomBy(1 / zoomStep, QRectF(viewport()->rect()).center());
}

void BenchMap::zoomBy(double factor, QPointF about) {
    if (m_scene.houses.empty()) return;
    m_fitted = false;
    const QPointF before = about - origin();
    const double old = m_layout.scale();
    setMapLayout(MapLayout(m_scene, m_layout.columns(), old * factor));
    const double share = m_layout.scale() / old;
    horizontalScrollBar()->setValue(static_cast<int>(std::lround(before.x() * share - about.x())));
    verticalScrollBar()->setValue(static_cast<int>(std::lround(before.y() * share - about.y())));
}

void BenchMap::select(const Selection& selection) {
    if (selection == m_selection) return;
    m_selection = selection;
    m_under = {};
    const QRect extent = m_layout.extent(m_scene, selection);
    if (!m_fitted && extent.isValid()) {
        const QRect room = viewport()->rect().adjusted(16, 16, -16, -16).translated(-origin());
        if (!room.contains(extent)) {
            horizontalScrollBar()->setValue(extent.center().x() - room.width() / 2);
            verticalScrollBar()->setValue(extent.center().y() - room.height() / 2);
        }
    }
    viewport()->update();
    tellAccessibility(*this);
}

void BenchMap::choose(const Selection& selection) {
    if (selection == m_selection) return;
    select(selection);
    Q_EMIT selectionChanged(m_selection);
}

bool BenchMap::event(QEvent* event) {
    if (event->type() != QEvent::Paint) return QAbstractScrollArea::event(event);
    QPainter painter(this);
    painter.fillRect(rect(), m_palette->paper);
    const QRect ring = viewport()->geometry().adjusted(-ringWidth, -ringWidth, ringWidth, ringWidth);
    if (hasFocus()) painter.fillRect(ring, m_palette->accent);
    return true;
}

void BenchMap::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    if (!m_type) return;
    if (m_scene.houses.empty()) {
        paintEmpty(painter);
        return;
    }
    if (carries()) {
        painter.end();
        return paintCarried(event);
    }
    const QPoint corner = origin();
    painter.translate(corner);
    for (const QRect& part : event->region()) paintMap(painter, part.translated(-corner));
}

void BenchMap::paintMap(QPainter& painter, const QRect& clip) const {
    painter.setClipRect(clip);
    MapPainter(*m_palette, *m_type, *m_wording, Surface::Pixels)
        .paint(painter, m_scene, m_layout, clip, m_selection);
}

/// While something is carried only what follows the aim is painted anew.
void BenchMap::paintCarried(QPaintEvent* event) {
    const QPoint corner = origin();
    const QRect visible = viewport()->rect().translated(-corner);
    const PaintKit kit(*m_palette, *m_type, *m_wording, Surface::Pixels);
    const MapHand::View view{m_scene, m_layout, visible, kit};
    if (m_under.isNull()) {
        const double ratio = devicePixelRatioF();
        m_under = QPixmap(viewport()->size() * ratio);
        m_under.setDevicePixelRatio(ratio);
        QPainter under(&m_under);
        under.translate(corner);
        paintMap(under, visible);
        m_hand->paintZones(under, view);
    }
    QPainter painter(viewport());
    painter.setClipRegion(event->region());
    painter.drawPixmap(0, 0, m_under);
    painter.translate(corner);
    m_hand->paintAim(painter, view);
}

void BenchMap::setHand(MapHand* hand) {
    m_hand = hand;
    m_under = {};
    viewport()->setCursor(carries() ? Qt::CrossCursor : Qt::ArrowCursor);
    viewport()->update();
}

void BenchMap::showAim() {
    viewport()->update();
}

void BenchMap::pointHandAt(QPoint position) {
    if (!carries()) return;
    m_hand->pointAt(m_scene, viewport()->rect().contains(position) ? m_layout.at(m_scene, position - origin())
                                                                   : MapHit{});
}

void BenchMap::letHandGo(QPoint position) {
    pointHandAt(position);
    if (carries()) m_hand->letGo();
}

void BenchMap::startDrag(QPoint position) {
    m_taken = true;
    const MapHit hit = m_layout.at(m_scene, *m_pressed - origin());
    if (hit.stay) Q_EMIT takenUp(m_scene.stays[nth(*hit.stay)].batch, true);
    m_mayPan = !carries(); // where nobody takes it up, as on a sheet to look at
    pointHandAt(position);
}

void BenchMap::paintEmpty(QPainter& painter) const {
    painter.fillRect(viewport()->rect(), m_palette->paper);
    const QRect room = viewport()->rect().adjusted(24, 24, -24, -24);
    const QString title = tr("There is no house in this book yet");
    const QString what = tr(
        "Go to Nursery, above, and put in a house, its benches and their zones: the map of them will stand "
        "here. Then say under Targets which plants are wanted, and under Stocks what cuttings are taken "
        "from.");
    const QFontMetrics titleMetrics(m_type->title);
    const int width = std::min(room.width(), 440);
    const QRect column(room.center().x() - width / 2, room.top(), width, room.height());
    const QRect words =
        QFontMetrics(m_type->body).boundingRect(column, Qt::AlignHCenter | Qt::TextWordWrap, what);
    int top = room.center().y() - (titleMetrics.height() + 12 + words.height()) / 2;
    painter.setPen(m_palette->ink);
    painter.setFont(m_type->title);
    painter.drawText(QRect(room.left(), top, room.width(), titleMetrics.height()), Qt::AlignHCenter, title);
    top += titleMetrics.height() + 12;
    painter.setPen(m_palette->quietInk);
    painter.setFont(m_type->body);
    painter.drawText(QRect(column.left(), top, width, words.height()), Qt::AlignHCenter | Qt::TextWordWrap,
                     what);
}

void BenchMap::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    m_under = {};
    if (m_fitted)
        fit();
    else
        updateScrollBars();
}

void BenchMap::scrollContentsBy(int dx, int dy) {
    m_under = {};
    if (carries())
        viewport()->update();
    else
        viewport()->scroll(dx, dy);
}

void BenchMap::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / 120.0;
    if (notches != 0) zoomBy(std::pow(zoomStep, notches), event->position());
    event->accept();
}

Selection BenchMap::selectionAt(QPoint position) const {
    const MapHit hit = m_layout.at(m_scene, position - origin());
    if (hit.stay) return m_scene.stays[static_cast<std::size_t>(*hit.stay)].batch;
    if (hit.zone) return m_scene.zones[static_cast<std::size_t>(*hit.zone)].id;
    return {};
}

QString BenchMap::wordsAt(QPoint position) const {
    const MapHit hit = m_layout.at(m_scene, position - origin());
    if (!hit.zone) return {};
    if (!hit.stay) return zoneSentence(m_scene.zones[static_cast<std::size_t>(*hit.zone)], *m_wording);
    const SceneStay& stay = m_scene.stays[static_cast<std::size_t>(*hit.stay)];
    const ScenePot& pot = m_scene.pots[static_cast<std::size_t>(*hit.pot)];
    return staySentence(m_scene, stay, *m_wording) + u'\n' + potSentence(pot, *m_wording);
}

bool BenchMap::viewportEvent(QEvent* event) {
    if (pinched(event)) return true;
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const QString words = wordsAt(help->pos());
        if (words.isEmpty())
            QToolTip::hideText();
        else
            QToolTip::showText(help->globalPos(), words, viewport());
        return true;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

void BenchMap::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
    m_pressed = event->pos();
    m_lastMouse = event->pos();
    m_taken = false;
    m_mayPan = event->button() == Qt::MiddleButton ||
               (!carries() && !m_layout.at(m_scene, event->pos() - origin()).stay);
}

void BenchMap::mouseMoveEvent(QMouseEvent* event) {
    if (carries() && !m_panning) pointHandAt(event->pos());
    if (!m_pressed) return;
    const bool far = (event->pos() - *m_pressed).manhattanLength() >= QApplication::startDragDistance();
    if (far && !m_mayPan && !m_taken && !carries()) return startDrag(event->pos());
    if (far && m_mayPan && !m_panning) {
        m_panning = true;
        viewport()->setCursor(Qt::ClosedHandCursor);
    }
    if (m_panning) {
        const QPoint moved = event->pos() - m_lastMouse;
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() - moved.x());
        verticalScrollBar()->setValue(verticalScrollBar()->value() - moved.y());
    }
    m_lastMouse = event->pos();
}

void BenchMap::mouseReleaseEvent(QMouseEvent* event) {
    if (!m_pressed) return;
    const bool panned = m_panning;
    m_pressed.reset();
    m_panning = false;
    viewport()->setCursor(carries() ? Qt::CrossCursor : Qt::ArrowCursor);
    if (panned || event->button() != Qt::LeftButton) return;
    if (carries())
        letHandGo(event->pos());
    else if (!m_taken) // Escape may have put back what was dragged
        choose(selectionAt(event->pos()));
}

void BenchMap::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    update();
}

void BenchMap::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    update();
}

} // namespace warmbench::ui
