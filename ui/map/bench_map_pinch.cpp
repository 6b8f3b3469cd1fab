#include "ui/map/bench_map.h"

#include <QGestureEvent>
#include <QNativeGestureEvent>
#include <QPinchGesture>

/// Two fingers on a touch pad or a touch screen.
namespace warmbench::ui {

bool BenchMap::pinched(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        const auto* pad = static_cast<QNativeGestureEvent*>(event);
        if (pad->gestureType() != Qt::ZoomNativeGesture) return false;
        zoomBy(1 + pad->value(), pad->position());
        return true;
    }
    if (event->type() != QEvent::Gesture) return false;
    auto* gestures = static_cast<QGestureEvent*>(event);
    const auto* pinch = static_cast<QPinchGesture*>(gestures->gesture(Qt::PinchGesture));
    if (!pinch) return false;
    if (pinch->changeFlags().testFlag(QPinchGesture::ScaleFactorChanged))
        zoomBy(pinch->scaleFactor(), viewport()->mapFromGlobal(pinch->centerPoint()));
    gestures->accept(Qt::PinchGesture);
    return true;
}

} // namespace warmbench::ui
