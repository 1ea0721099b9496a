// SPDX-License-Identifier: GPL-3.0-or-later
// What all views point at together: a ring, and a show that is only looked at (a cure under the mouse).
#pragma once
#include <QObject>
#include <QString>
#include <memory>
#include <optional>

#include "core/loop/figures.h"
#include "core/show/show.h"

namespace howlmap::app {

/// A show that nobody has applied yet.
struct Preview {
    QString name;
    std::shared_ptr<const Show> show;
};

class Spotlight : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;

    const std::optional<Ring>& ring() const { return ring_; }
    void set_ring(std::optional<Ring> ring);

    const std::optional<Preview>& preview() const { return preview_; }
    void set_preview(std::optional<Preview> preview);

  Q_SIGNALS:
    void ring_changed();
    void preview_changed();

  private:
    std::optional<Ring> ring_;
    std::optional<Preview> preview_;
};

}  // namespace howlmap::app
