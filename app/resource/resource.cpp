#include "app/resource/resource.h"

#include <QFile>

#include <stdexcept>

namespace warmbench::app {

std::string resourceText(std::string_view name) {
    const std::string path = ":/" + std::string(name);
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) throw std::logic_error("nothing is built in as " + path);
    return file.readAll().toStdString();
}

} // namespace warmbench::app
