#include "core/forecast/mat_heat.h"

namespace warmbench::forecast {

climate::MatLoad matLoadIn(const HouseBook& book, const Zone& zone, Celsius setPoint, Celsius air) {
    const double side = static_cast<double>(book.get<Bench>(zone.bench).slot.parts) / 1000.0;
    const double area = side * side * zone.rows * zone.cols;
    const climate::Mat mat{area, zone.mat->rated.units() / area, zone.mat->loss.units()};
    return climate::matLoad(mat, setPoint.units(), air.units());
}

} // namespace warmbench::forecast
