// Which frame of a cine is shown: playing at the speed of the heart or slower, stepping, looping. Knows no pictures.
#pragma once

#include "core/cine/frame_times.h"

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace gauge::app {

class CinePlayer : public QObject {
    Q_OBJECT
public:
    explicit CinePlayer(QObject* parent = nullptr);

    /// A new cine: stops, goes to its first frame. @param count  >= 0.
    void setCine(const core::FrameTimes& times, int count);

    int frame() const { return m_frame; }
    int count() const { return m_count; }
    const core::FrameTimes& times() const { return m_times; }
    /// Held within the cine; stops nothing.
    void setFrame(int frame);
    /// Steps on or back and stops playing; goes round at the ends while looping.
    void step(int frames);

    bool isPlaying() const { return m_timer.isActive(); }
    void setPlaying(bool playing);
    void toggle() { setPlaying(!isPlaying()); }

    /// Of the true speed: 0.1 to 2; 1 where the times are not known means kUntoldFrameMs a frame.
    double speed() const { return m_speed; }
    void setSpeed(double speed);
    bool isLooping() const { return m_loop; }
    void setLooping(bool loop);

    /// How long a frame lasts where the file does not tell.
    static constexpr double kUntoldFrameMs = 40.0;
    /// Shows what `ms` of true time after the present frame is due; for the timer, and for tests.
    void advance(double ms);

signals:
    void frameChanged(int frame);
    void playingChanged(bool playing);
    void settingsChanged();

private:
    double lastsMs(int frame) const;

    core::FrameTimes m_times;
    int m_count = 0;
    int m_frame = 0;
    double m_speed = 1.0;
    bool m_loop = true;
    double m_restMs = 0.0; ///< true time spent on the present frame
    QTimer m_timer;
    QElapsedTimer m_clock;
};

} // namespace gauge::app
